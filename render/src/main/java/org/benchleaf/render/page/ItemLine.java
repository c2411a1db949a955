package org.benchleaf.render.page;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.benchleaf.shared.code.ItemKey;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.stock.Availability;
import org.benchleaf.shared.stock.Condition;
import org.benchleaf.shared.stock.ItemForm;
import org.benchleaf.shared.stock.StockSize;

/// One line of the stock table.
///
/// @param key the item
/// @param size as sold
/// @param form as grown
/// @param availability as of the time of the block
/// @param price each, when there is one to show
/// @param seen what was last seen on a walk, may be empty
/// @param seenOn the day it was seen; empty when nothing was, or nobody wrote the day down
/// @param next the next crop that comes to what can be had now
public record ItemLine(
        ItemKey key,
        StockSize size,
        ItemForm form,
        Availability availability,
        Optional<Money> price,
        List<Condition> seen,
        Optional<LocalDate> seenOn,
        Optional<Availability.From> next) {
    public ItemLine {
        seen = List.copyOf(seen);
    }

    /// A line without a day of sight and without a next crop.
    public ItemLine(
            ItemKey key,
            StockSize size,
            ItemForm form,
            Availability availability,
            Optional<Money> price,
            List<Condition> seen) {
        this(key, size, form, availability, price, seen, Optional.empty(), Optional.empty());
    }
}
