package org.benchleaf.search.substitute;

import java.util.Comparator;
import java.util.Optional;
import org.benchleaf.catalog.model.ItemRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.measure.YearWeek;

/// The item of a substitute that serves a demand best.
///
/// @param item what is offered
/// @param free how many can be had by the week asked for
/// @param asked how many are wanted
/// @param dearer by how many cents or the like a piece costs more (positive) or less than the original in the
///     same size; empty when either has no price, or the sizes differ
public record Offer(ItemRecord item, int free, int asked, Optional<Long> dearer) {
    /// How many can be delivered of what is asked.
    public int delivered() {
        return Math.min(free, asked);
    }

    /// Whether it is less than asked.
    public boolean isPartial() {
        return free < asked;
    }

    /// The item with enough plants, or else the most; of these the cheapest.
    ///
    /// @param usual the original's stock, for its price
    static Optional<Offer> of(PlantStock stock, PlantStock usual, Demand demand, YearWeek now) {
        YearWeek by = demand.by().orElse(now);
        Comparator<ItemRecord> most =
                Comparator.comparingInt((ItemRecord item) -> -Math.min(demand.count(), stock.freeBy(item.key(), by)));
        return stock.items().stream()
                .filter(item -> demand.size().isEmpty() || demand.size().get().equals(item.size()))
                .filter(item -> stock.freeBy(item.key(), by) > 0)
                .min(most.thenComparing(item -> !isUsual(item, usual))
                        .thenComparing(item -> item.price().map(Money::minor).orElse(Long.MAX_VALUE)))
                .map(item -> new Offer(item, stock.freeBy(item.key(), by), demand.count(), dearer(item, usual)));
    }

    private static boolean isUsual(ItemRecord item, PlantStock usual) {
        return usual.items().stream().anyMatch(other -> other.size().equals(item.size()));
    }

    private static Optional<Long> dearer(ItemRecord item, PlantStock usual) {
        return item.price()
                .flatMap(price -> usual.items().stream()
                        .filter(other -> other.size().equals(item.size()) && other.form() == item.form())
                        .flatMap(other -> other.price().stream())
                        .filter(other -> other.currency().equals(price.currency()))
                        .findFirst()
                        .map(other -> price.minor() - other.minor()));
    }
}
