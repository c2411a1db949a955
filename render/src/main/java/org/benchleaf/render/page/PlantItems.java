package org.benchleaf.render.page;

import java.util.List;
import org.benchleaf.shared.code.LiveLink;

/// One plant in a list of many, with the items of it that are listed.
///
/// @param title names
/// @param year data of the strip of twelve months
/// @param items in the order of print
/// @param link the plant's live page
public record PlantItems(PlantTitle title, YearLook year, List<ItemLine> items, LiveLink link) {
    public PlantItems {
        items = List.copyOf(items);
    }
}
