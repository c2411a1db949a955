package org.benchleaf.bench;

import java.time.Instant;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.catalog.model.CommonName;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.name.BotanicalName;

/// A made-up catalog of names alone, so that looking names up is measured and nothing else.
///
/// @param size how many plants
record NamesOnly(int size) implements CatalogView {
    /// The name of a plant; the same in a catalog of any size.
    static BotanicalName name(int number) {
        return SyntheticCatalog.name(number, new SplittableRandom(0x5EEDL * 31 + number));
    }

    private static PlantRecord plant(int number) {
        BotanicalName name = name(number);
        CommonName common = new CommonName(name.genus().toLowerCase(Locale.ROOT) + " bush", Locale.ENGLISH);
        return new PlantRecord(
                PlantKey.ofSerial(number + 1L),
                name,
                Optional.empty(),
                List.of(common),
                List.of(),
                Facts.of(List.of()),
                List.of(),
                false);
    }

    @Override
    public CatalogRevision revision() {
        return new CatalogRevision(1);
    }

    @Override
    public Optional<Instant> changedAt() {
        return Optional.empty();
    }

    @Override
    public Map<PlantKey, PlantRecord> plants(Collection<PlantKey> keys) {
        return Map.of();
    }

    @Override
    public Map<PlantKey, PlantStock> stock(Collection<PlantKey> keys) {
        Map<PlantKey, PlantStock> none = new LinkedHashMap<>();
        keys.forEach(key -> none.put(key, PlantStock.none(key)));
        return none;
    }

    @Override
    public CatalogRevision forEachPlant(Consumer<PlantRecord> consumer) {
        for (int number = 0; number < size; number++) {
            consumer.accept(plant(number));
        }
        return revision();
    }

    @Override
    public CatalogRevision forEachStock(Consumer<PlantStock> consumer) {
        return revision();
    }

    @Override
    public List<Change> changesSince(CatalogRevision since) {
        return List.of();
    }
}
