package org.benchleaf.app.service;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToIntFunction;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.PlantRecord;

/// The plants of a catalog that are hardest to print: the longest of everything, the emptiest, those with a photograph.
final class HardCases {
    private static final int PHOTOGRAPHS = 3;

    private HardCases() {}

    /// @return each once, the longest name first
    static List<PlantRecord> of(CatalogView catalog) {
        List<PlantRecord> all = new ArrayList<>();
        catalog.forEachPlant(all::add);
        Set<PlantRecord> hard = new LinkedHashSet<>();
        List<ToIntFunction<PlantRecord>> lengths = List.of(
                plant -> plant.name().toString().length(),
                plant -> plant.commonNames().stream()
                        .mapToInt(name -> name.text().length())
                        .max()
                        .orElse(0),
                plant -> text(plant.facts().value(Attributes.SELLING_NOTE)),
                plant -> text(plant.facts().value(Attributes.DESCRIPTION)),
                HardCases::cautions,
                plant -> plant.facts().value(Attributes.SALE_RULES).isPresent() ? 1 : 0,
                plant -> PageFacts.of(plant.facts(), List.of()).size(),
                plant -> -PageFacts.of(plant.facts(), List.of()).size());
        for (ToIntFunction<PlantRecord> length : lengths) {
            all.stream().max(Comparator.comparingInt(length)).ifPresent(hard::add);
        }
        all.stream()
                .filter(plant -> plant.facts().value(Attributes.PHOTOGRAPHS).isPresent())
                .limit(PHOTOGRAPHS)
                .forEach(hard::add);
        return List.copyOf(hard);
    }

    private static int text(Optional<String> text) {
        return text.map(String::length).orElse(0);
    }

    private static int cautions(PlantRecord plant) {
        return plant.facts().value(Attributes.CAUTIONS).orElse(List.of()).stream()
                .mapToInt(caution -> 30 + caution.how().length())
                .sum();
    }
}
