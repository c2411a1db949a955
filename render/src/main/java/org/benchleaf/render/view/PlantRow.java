package org.benchleaf.render.view;

import java.util.List;

/// A plant and its items in a table of many.
///
/// @param name botanical name, set
/// @param common name, set
/// @param key the plant's key
/// @param strip key of the drawing of its year
/// @param items one row each; at least one
/// @param height in mm, measured
public record PlantRow(TextBlock name, TextBlock common, String key, String strip, List<Item> items, double height)
        implements DocumentView.Line {
    public PlantRow {
        items = List.copyOf(items);
    }

    /// One item.
    ///
    /// @param size set
    /// @param now how many can be had today; empty when none
    /// @param later what comes, or that it is sold out, set
    /// @param marks keys of the drawings of how it looks
    /// @param price each; may be empty
    public record Item(TextBlock size, String now, TextBlock later, List<String> marks, String price) {
        public Item {
            marks = List.copyOf(marks);
        }
    }
}
