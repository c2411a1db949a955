package org.benchleaf.app.service;

import java.util.List;
import java.util.Map;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.Synonym;
import org.benchleaf.catalog.names.NameReader;
import org.benchleaf.catalog.names.NameReading;
import org.benchleaf.search.names.NameHit;
import org.benchleaf.search.names.NameIndex;
import org.benchleaf.search.names.NameMatch;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.fact.Source;

/// Asks the catalog who is meant by a name: its parts as read, and the plants found, each with who says so.
public final class NameLookup {
    private final CatalogView catalog;
    private final NameIndex names;

    public NameLookup(CatalogView catalog, NameIndex names) {
        this.catalog = catalog;
        this.names = names;
    }

    /// The plants a name may mean, the surest first.
    ///
    /// @param limit how many at most, 1 to 1000
    public NameAnswer ask(String typed, int limit) {
        List<NameHit> hits = names.find(typed, limit);
        Map<PlantKey, PlantRecord> plants =
                catalog.plants(hits.stream().map(NameHit::plant).toList());
        List<Found> found = hits.stream()
                .filter(hit -> plants.containsKey(hit.plant()))
                .map(hit -> found(hit, plants))
                .toList();
        return new NameAnswer(typed, NameReader.read(typed), found);
    }

    private static Found found(NameHit hit, Map<PlantKey, PlantRecord> plants) {
        PlantRecord plant = plants.get(hit.plant());
        List<Source> sources = hit.how() == NameMatch.SYNONYM
                ? plant.synonyms().stream()
                        .filter(synonym -> synonym.text().equals(hit.matched()))
                        .map(Synonym::source)
                        .distinct()
                        .toList()
                : List.of();
        return new Found(plant, hit.matched(), hit.how(), sources);
    }

    /// What was asked and found.
    ///
    /// @param reading the name's parts
    /// @param found the surest first
    public record NameAnswer(String typed, NameReading reading, List<Found> found) {}

    /// One plant found.
    ///
    /// @param matched the name by which it was found
    /// @param synonymBy who gives that name as a synonym; empty when it was found otherwise
    public record Found(PlantRecord plant, String matched, NameMatch how, List<Source> synonymBy) {}
}
