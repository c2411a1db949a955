package org.benchleaf.search;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.shared.code.PlantKey;

/// A catalog that lives in memory: a second, plain implementation of the read side, changed by its own methods.
public final class InMemoryCatalogView implements CatalogView {
    private final Map<PlantKey, PlantRecord> plants = new TreeMap<>();
    private final Map<PlantKey, PlantStock> stocks = new TreeMap<>();
    private final Map<PlantKey, Long> plantChanges = new LinkedHashMap<>();
    private final Map<PlantKey, Long> stockChanges = new LinkedHashMap<>();
    private long revision;

    public synchronized void put(PlantRecord plant) {
        plants.put(plant.key(), plant);
        plantChanges.put(plant.key(), ++revision);
    }

    public synchronized void put(PlantStock stock) {
        stocks.put(stock.plant(), stock);
        stockChanges.put(stock.plant(), ++revision);
    }

    public synchronized void retire(PlantKey key) {
        PlantRecord plant = plant(key).orElseThrow();
        put(new PlantRecord(
                key,
                plant.name(),
                plant.taxon(),
                plant.commonNames(),
                plant.synonyms(),
                plant.facts(),
                plant.otherFacts(),
                true));
    }

    @Override
    public synchronized CatalogRevision revision() {
        return new CatalogRevision(revision);
    }

    @Override
    public Optional<Instant> changedAt() {
        return revision == 0 ? Optional.empty() : Optional.of(Instant.EPOCH.plusSeconds(revision));
    }

    @Override
    public synchronized Map<PlantKey, PlantRecord> plants(Collection<PlantKey> keys) {
        Map<PlantKey, PlantRecord> found = new LinkedHashMap<>();
        for (PlantKey key : keys) {
            if (plants.containsKey(key)) {
                found.put(key, plants.get(key));
            }
        }
        return found;
    }

    @Override
    public synchronized Map<PlantKey, PlantStock> stock(Collection<PlantKey> keys) {
        Map<PlantKey, PlantStock> found = new LinkedHashMap<>();
        for (PlantKey key : keys) {
            found.put(key, stocks.getOrDefault(key, PlantStock.none(key)));
        }
        return found;
    }

    @Override
    public synchronized CatalogRevision forEachPlant(Consumer<PlantRecord> consumer) {
        plants.values().stream().filter(plant -> !plant.retired()).forEach(consumer);
        return revision();
    }

    @Override
    public synchronized CatalogRevision forEachStock(Consumer<PlantStock> consumer) {
        stocks.values().stream().filter(stock -> !stock.items().isEmpty()).forEach(consumer);
        return revision();
    }

    @Override
    public synchronized List<Change> changesSince(CatalogRevision since) {
        List<Change> changes = new ArrayList<>();
        plantChanges.forEach((key, at) -> changes.add(new Change(new CatalogRevision(at), key, Change.Kind.PLANT)));
        stockChanges.forEach((key, at) -> changes.add(new Change(new CatalogRevision(at), key, Change.Kind.STOCK)));
        return changes.stream()
                .filter(change -> change.revision().compareTo(since) > 0)
                .sorted(Comparator.comparing(Change::revision))
                .toList();
    }
}
