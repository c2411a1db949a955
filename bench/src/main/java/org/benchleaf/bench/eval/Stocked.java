package org.benchleaf.bench.eval;

import java.util.List;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.shared.measure.YearWeek;

/// What the nursery has in stock.
///
/// @param plants of the catalog
/// @param names under which lists may name them
record Stocked(List<PlantRecord> plants, PlantNames names, Benchleaf benchleaf) {
    boolean has(Taxon taxon) {
        return plants.stream()
                .filter(plant -> taxon.holds(plant, names))
                .anyMatch(plant -> benchleaf.catalog().stock(List.of(plant.key())).values().stream()
                        .anyMatch(stock -> stock.items().stream()
                                .anyMatch(item -> stock.freeBy(item.key(), YearWeek.of(benchleaf.today())) > 0)));
    }
}
