package org.benchleaf.render.page;

import java.util.List;

/// Two to four plants side by side, what differs first.
///
/// @param plants as on their own sheets
/// @param shop who prints
public record Comparison(List<PlantSheet> plants, Shop shop) {
    /// So many stand readable beside each other.
    public static final int MOST = 4;

    public Comparison {
        plants = List.copyOf(plants);
        if (plants.size() < 2 || plants.size() > MOST) {
            throw new IllegalArgumentException("two to four plants are compared; got " + plants.size());
        }
    }
}
