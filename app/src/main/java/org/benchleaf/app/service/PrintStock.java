package org.benchleaf.app.service;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.benchleaf.app.Refusal;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.catalog.model.ItemRecord;
import org.benchleaf.catalog.model.LotRecord;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.code.ItemKey;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.stock.StockSize;

/// What stands in stock of the plants of one print, looked up once.
final class PrintStock {
    private final Map<PlantKey, PlantStock> stock;

    private PrintStock(Map<PlantKey, PlantStock> stock) {
        this.stock = stock;
    }

    static PrintStock of(CatalogView catalog, List<PlantRecord> plants) {
        return new PrintStock(
                catalog.stock(plants.stream().map(PlantRecord::key).toList()));
    }

    static PrintStock ofWanted(CatalogView catalog, List<Wanted> wanted) {
        return of(catalog, wanted.stream().map(Wanted::plant).toList());
    }

    PlantStock of(PlantRecord plant) {
        return stock.getOrDefault(plant.key(), PlantStock.none(plant.key()));
    }

    /// The item of a size when one is asked, else the smallest.
    ///
    /// @throws Refusal when the plant has no item of that size
    Optional<ItemRecord> item(PlantRecord plant, Optional<StockSize> size) {
        List<ItemRecord> items = of(plant).items();
        if (size.isEmpty()) {
            return items.stream().findFirst();
        }
        return Optional.of(items.stream()
                .filter(item -> item.size().equals(size.get()))
                .findFirst()
                .orElseThrow(() ->
                        new Refusal(Problem.of("item.no-such-size", size.get().toString())
                                .with("plant", plant.name().toString())
                                .with(
                                        "accepted",
                                        String.join(
                                                ", ",
                                                items.stream()
                                                        .map(item -> item.size().toString())
                                                        .distinct()
                                                        .toList())))));
    }

    Optional<ItemRecord> item(PlantRecord plant, int number) {
        return of(plant).items().stream()
                .filter(item -> item.key().number() == number)
                .findFirst();
    }

    ItemRecord item(PlantRecord plant, ItemKey key) {
        return of(plant).items().stream()
                .filter(item -> item.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("a lot without its item: " + key));
    }

    /// Lots that hold any, in the order of their places.
    List<LotRecord> lots(Wanted wanted) {
        return of(wanted.plant()).lots().stream()
                .filter(lot -> lot.count() > 0)
                .filter(lot -> wanted.size().isEmpty()
                        || item(wanted.plant(), lot.item())
                                .size()
                                .equals(wanted.size().get()))
                .sorted(Comparator.comparing((LotRecord lot) -> walked(lot.place()))
                        .thenComparing(LotRecord::lot))
                .toList();
    }

    List<Wanted> inOrder(List<Wanted> wanted, PrintOrder order) {
        return switch (order) {
            case GIVEN -> wanted;
            case NAME ->
                wanted.stream()
                        .sorted(Comparator.comparing(one -> one.plant().name().toString()))
                        .toList();
            case BENCH ->
                wanted.stream()
                        .sorted(Comparator.comparing(one -> firstPlace(one.plant())))
                        .toList();
        };
    }

    private String firstPlace(PlantRecord plant) {
        return of(plant).lots().stream()
                .filter(lot -> lot.count() > 0)
                .map(lot -> walked(lot.place()))
                .min(Comparator.naturalOrder())
                .orElse("\uFFFF");
    }

    /// A place so written that `B4-2` stands before `B4-12`.
    static String walked(String place) {
        return Pattern.compile("\\d+")
                .matcher(place)
                .replaceAll(number -> "0".repeat(Math.max(0, 8 - number.group().length())) + number.group());
    }
}
