package org.benchleaf.app.service;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
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
import org.benchleaf.shared.name.BotanicalName;

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
        NameReading reading = NameReader.read(typed);
        List<Found> found = found(names.find(typed, limit));
        List<PlantRecord> kin = found.isEmpty()
                ? reading.known().map(name -> kin(name, limit)).orElse(List.of())
                : List.of();
        return new NameAnswer(typed, reading, found, kin);
    }

    /// Of a name that is not here: the plants of its species, or else of its genus.
    private List<PlantRecord> kin(BotanicalName name, int limit) {
        Stream<String> above = Stream.concat(
                name.species().map(epithet -> name.genus() + " " + epithet.text()).stream(), Stream.of(name.genus()));
        return above.map(taxon -> names.complete(taxon, limit))
                .map(this::found)
                .map(found -> found.stream()
                        .map(Found::plant)
                        .filter(plant -> plant.name().genus().equals(name.genus()))
                        .toList())
                .filter(plants -> !plants.isEmpty())
                .findFirst()
                .orElse(List.of());
    }

    private List<Found> found(List<NameHit> hits) {
        Map<PlantKey, PlantRecord> plants =
                catalog.plants(hits.stream().map(NameHit::plant).toList());
        return hits.stream()
                .flatMap(hit -> Optional.ofNullable(plants.get(hit.plant())).map(plant -> found(hit, plant)).stream())
                .toList();
    }

    private static Found found(NameHit hit, PlantRecord plant) {
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
    /// @param kin when nothing was found: plants of the same species, or else of the same genus
    public record NameAnswer(String typed, NameReading reading, List<Found> found, List<PlantRecord> kin) {}

    /// One plant found.
    ///
    /// @param matched the name by which it was found
    /// @param synonymBy who gives that name as a synonym; empty when it was found otherwise
    public record Found(PlantRecord plant, String matched, NameMatch how, List<Source> synonymBy) {}
}
