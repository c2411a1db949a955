package org.benchleaf.catalog.model;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.benchleaf.shared.code.ItemKey;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.stock.Availability;

/// Everything for sale of one plant, as of one moment.
///
/// @param plant the plant
/// @param items its items, by size
/// @param lots their lots
public record PlantStock(PlantKey plant, List<ItemRecord> items, List<LotRecord> lots) {
    public PlantStock {
        items = items.stream()
                .sorted(Comparator.comparing(ItemRecord::size).thenComparing(ItemRecord::key))
                .toList();
        lots = List.copyOf(lots);
    }

    public static PlantStock none(PlantKey plant) {
        return new PlantStock(plant, List.of(), List.of());
    }

    /// The lots of an item.
    public List<LotRecord> lotsOf(ItemKey item) {
        return lots.stream().filter(lot -> lot.item().equals(item)).toList();
    }

    /// How many of an item can be promised for a week: what is free of the lots ready by then.
    public int freeBy(ItemKey item, YearWeek week) {
        return lots.stream()
                .filter(lot -> lot.item().equals(item) && lot.isReadyBy(week))
                .mapToInt(LotRecord::free)
                .sum();
    }

    /// What can be had of an item: now, or from the first week that brings any.
    public Availability availability(ItemKey item, YearWeek now) {
        int today = freeBy(item, now);
        if (today > 0) {
            return new Availability.InStock(today);
        }
        Optional<YearWeek> first = lots.stream()
                .filter(lot -> lot.item().equals(item) && lot.free() > 0)
                .flatMap(lot -> lot.ready().stream())
                .min(Comparator.naturalOrder());
        return first.<Availability>map(week -> new Availability.From(week, freeBy(item, week)))
                .orElseGet(Availability.SoldOut::new);
    }

    /// All that can be said of an item's stock: free now, week by week ahead, and how it looked when last seen.
    public ItemOutlook outlook(ItemKey item, YearWeek now) {
        return ItemOutlook.of(item, lotsOf(item), now);
    }
}
