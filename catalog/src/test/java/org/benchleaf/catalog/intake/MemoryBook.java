package org.benchleaf.catalog.intake;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.NameBook;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.name.BotanicalName;

/// A catalog in memory that takes plans over as the store does, without inheritance: what planning needs and no
/// more.
final class MemoryBook implements NameBook {
    private final Map<BotanicalName, PlantRecord> byName = new HashMap<>();
    private final Map<String, PlantKey> bySynonym = new HashMap<>();
    private final Set<String> lots = new HashSet<>();
    private long revision;

    MemoryBook apply(ImportPlan plan) {
        for (PlantDraft draft : plan.plants()) {
            PlantKey key = draft.key().orElseGet(() -> PlantKey.ofSerial(byName.size()));
            byName.put(
                    draft.name(),
                    new PlantRecord(
                            key,
                            draft.name(),
                            Optional.empty(),
                            draft.commonNames(),
                            draft.synonyms(),
                            Facts.of(draft.facts()),
                            List.of(),
                            false));
            draft.synonyms().forEach(synonym -> bySynonym.put(synonym.text(), key));
        }
        plan.lots().forEach(lot -> lots.add(lot.lot()));
        revision++;
        return this;
    }

    @Override
    public Optional<PlantKey> byName(BotanicalName name) {
        return Optional.ofNullable(byName.get(name)).map(PlantRecord::key);
    }

    @Override
    public Optional<PlantKey> bySynonym(String name) {
        return Optional.ofNullable(bySynonym.get(name));
    }

    @Override
    public Optional<PlantRecord> byKey(PlantKey key) {
        return byName.values().stream().filter(plant -> plant.key().equals(key)).findFirst();
    }

    @Override
    public boolean hasLot(String lot) {
        return lots.contains(lot);
    }

    @Override
    public CatalogRevision revision() {
        return new CatalogRevision(revision);
    }
}
