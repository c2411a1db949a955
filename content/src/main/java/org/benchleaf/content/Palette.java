package org.benchleaf.content;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.benchleaf.shared.color.Srgb;

/// The inks of a shop's paper. Color of its own comes from the plants; a palette only tints the words and lines round
/// them.
///
/// @param name by which a shop chooses it
/// @param inks by their names in style sheets
public record Palette(String name, Map<String, Srgb> inks) {
    /// The palette of a shop that chose none.
    public static final String USUAL = "slate";

    /// Words of a page.
    public static final List<String> WORDS = List.of("ink", "soft", "quiet", "accent");

    private static final List<String> INKS = List.of("ink", "soft", "quiet", "line", "hair", "accent");

    public Palette {
        inks = Map.copyOf(inks);
    }

    /// @param name an ink that palettes have, such as `soft`
    public Srgb ink(String name) {
        return Objects.requireNonNull(inks.get(name), name);
    }

    /// The same with an accent of the shop's own.
    public Palette withAccent(Srgb accent) {
        Map<String, Srgb> other = new LinkedHashMap<>(inks);
        other.put("accent", accent);
        return new Palette(name, other);
    }

    /// Puts the inks in the places of their names.
    String tint(String style) {
        String tinted = style;
        for (Map.Entry<String, Srgb> ink : inks.entrySet()) {
            tinted = tinted.replace("%" + ink.getKey() + "%", ink.getValue().toString());
        }
        return tinted;
    }

    /// Reads `palettes.csv`: a heading, then a name and six inks a line.
    ///
    /// @throws MissingContent when a line lacks an ink
    static List<Palette> read(String csv) {
        List<Palette> palettes = new ArrayList<>();
        for (String line : csv.lines().skip(1).filter(text -> !text.isBlank()).toList()) {
            String[] cells = line.split(",", -1);
            Map<String, Srgb> inks = new LinkedHashMap<>();
            for (int n = 0; n < INKS.size(); n++) {
                Optional<Srgb> ink =
                        n + 1 < cells.length ? Srgb.read(cells[n + 1]).toOptional() : Optional.empty();
                String missing = "ink " + INKS.get(n) + " of palette " + cells[0];
                inks.put(INKS.get(n), ink.orElseThrow(() -> new MissingContent(missing, "palettes.csv")));
            }
            palettes.add(new Palette(cells[0].strip(), inks));
        }
        return List.copyOf(palettes);
    }
}
