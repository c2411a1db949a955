package org.benchleaf.render.page;

import java.time.LocalDateTime;
import java.util.List;

/// What can be had of a plant at one moment.
///
/// @param asOf when it was looked up, in the shop's own time
/// @param items in the order of print; may be empty
public record StockBlock(LocalDateTime asOf, List<ItemLine> items) {
    public StockBlock {
        items = List.copyOf(items);
    }
}
