package org.benchleaf.catalog.model;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.benchleaf.shared.code.ItemKey;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.stock.Condition;

/// What can be promised of an item now and in the weeks ahead, and how it looked when last seen.
///
/// @param item the item
/// @param count how many stand in its ready lots, held ones too
/// @param held how many of these are set aside
/// @param free how many can be promised now
/// @param coming what more can be promised later, week by week
/// @param seen the latest look at any of its lots that have plants
public record ItemOutlook(ItemKey item, int count, int held, int free, List<Coming> coming, Optional<LastSeen> seen) {
    public ItemOutlook {
        coming = List.copyOf(coming);
    }

    /// A crop coming on.
    ///
    /// @param week from which it can be taken
    /// @param more how many it adds, 1 or more
    /// @param total how many can be promised by then if nothing goes before
    public record Coming(YearWeek week, int more, int total) {}

    /// A look at a lot.
    ///
    /// @param day when
    /// @param lot which
    /// @param conditions what was seen; at least one
    public record LastSeen(LocalDate day, String lot, Set<Condition> conditions) {}

    static ItemOutlook of(ItemKey item, List<LotRecord> lots, YearWeek now) {
        List<LotRecord> ready = lots.stream().filter(lot -> lot.isReadyBy(now)).toList();
        int free = ready.stream().mapToInt(LotRecord::free).sum();
        Map<YearWeek, Integer> later = new TreeMap<>();
        lots.stream()
                .filter(lot -> !lot.isReadyBy(now) && lot.free() > 0)
                .forEach(lot -> lot.ready().ifPresent(week -> later.merge(week, lot.free(), Integer::sum)));
        int total = free;
        List<Coming> coming = new java.util.ArrayList<>();
        for (Map.Entry<YearWeek, Integer> week : later.entrySet()) {
            total += week.getValue();
            coming.add(new Coming(week.getKey(), week.getValue(), total));
        }
        return new ItemOutlook(
                item,
                ready.stream().mapToInt(LotRecord::count).sum(),
                ready.stream().mapToInt(LotRecord::held).sum(),
                free,
                coming,
                lastSeen(lots));
    }

    /// Of two lots seen on one day the fuller one.
    private static Optional<LastSeen> lastSeen(List<LotRecord> lots) {
        return lots.stream()
                .filter(lot -> lot.count() > 0 && !lot.conditions().isEmpty())
                .flatMap(lot -> lot.seenOn().stream().map(day -> new Look(day, lot)))
                .max(Comparator.comparing(Look::day)
                        .thenComparing(look -> look.lot().count()))
                .map(look ->
                        new LastSeen(look.day(), look.lot().lot(), look.lot().conditions()));
    }

    private record Look(LocalDate day, LotRecord lot) {}
}
