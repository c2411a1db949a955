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
/// @param held how many of them are set aside by holds that had not ended when it was read, 0 or more
/// @param conditions what was seen
/// @param seenOn the day of the walk
public record LotRecord(
        String lot,
        ItemKey item,
        String place,
        Optional<YearWeek> ready,
        int count,
        int held,
        Set<Condition> conditions,
        Optional<LocalDate> seenOn) {
    public LotRecord {
        conditions = Set.copyOf(conditions);
        if (count < 0 || held < 0) {
            throw new IllegalArgumentException("no lot has " + count + " plants, " + held + " of them held: " + lot);
        }
    }

    /// A lot of which nothing is set aside.
    public LotRecord(
            String lot,
            ItemKey item,
            String place,
            Optional<YearWeek> ready,
            int count,
            Set<Condition> conditions,
            Optional<LocalDate> seenOn) {
        this(lot, item, place, ready, count, 0, conditions, seenOn);
    }

    /// How many can be promised, 0 or more; fewer than are held when some of those are gone.
    public int free() {
        return Math.max(0, count - held);
    }

    /// Whether it can be taken in that week.
    public boolean isReadyBy(YearWeek week) {
        return ready.map(first -> first.compareTo(week) <= 0).orElse(true);
    }
}
