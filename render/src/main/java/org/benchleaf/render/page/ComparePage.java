package org.benchleaf.render.page;

import java.util.List;

/// Up to four plants side by side.
///
/// @param plants in the order asked
/// @param sheets what each of them is, in the same order
/// @param typed the name that was to be added; empty when none was
/// @param candidates what that name may mean, when it is not one plant
/// @param room whether another may be added
public record ComparePage(
        List<Chosen> plants,
        List<PlantSheet> sheets,
        String typed,
        List<Candidate> candidates,
        boolean room,
        Shop shop) {
    public static final int MOST = 4;

    public ComparePage {
        plants = List.copyOf(plants);
        sheets = List.copyOf(sheets);
        candidates = List.copyOf(candidates);
        if (plants.size() != sheets.size() || plants.size() > MOST) {
            throw new IllegalArgumentException("up to four plants, each with its sheet");
        }
    }

    /// @param key as it stands in the address
    /// @param path to the plant's page
    /// @param without path to the comparison without it
    public record Chosen(String key, String path, String without) {}

    /// A plant that may be meant.
    ///
    /// @param path to the comparison with it
    public record Candidate(org.benchleaf.shared.name.BotanicalName name, String path) {}
}
