package org.benchleaf.bench.eval;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.names.NameReader;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.name.BotanicalName;

/// Every name of each plant, accepted and former, read once.
final class PlantNames {
    private final Map<PlantKey, List<BotanicalName>> names = new HashMap<>();

    List<BotanicalName> of(PlantRecord plant) {
        return names.computeIfAbsent(plant.key(), fresh -> read(plant));
    }

    private static List<BotanicalName> read(PlantRecord plant) {
        List<BotanicalName> read = new ArrayList<>(List.of(plant.name()));
        plant.synonyms().stream()
                .map(synonym -> NameReader.read(synonym.text()).known())
                .flatMap(Optional::stream)
                .forEach(read::add);
        return List.copyOf(read);
    }
}
