package org.benchleaf.catalog.model;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.shared.code.ItemKey;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.stock.Condition;

/// A batch of an item: where it stands, when it is ready, how it looked on the last crop walk.
///
/// @param lot the grower's own number for it, unique in the catalog
/// @param item the item
/// @param place block and row
/// @param ready the week from which it can be taken; empty when it is ready
/// @param count how many there are: the sum of the ledger's entries, 0 or more
/// @param conditions what was seen
/// @param seenOn the day of the walk
public record LotRecord(
        String lot,
        ItemKey item,
        String place,
        Optional<YearWeek> ready,
        int count,
        Set<Condition> conditions,
        Optional<LocalDate> seenOn) {
    public LotRecord {
        conditions = Set.copyOf(conditions);
        if (count < 0) {
            throw new IllegalArgumentException("a lot cannot hold " + count + " plants: " + lot);
        }
    }
}
