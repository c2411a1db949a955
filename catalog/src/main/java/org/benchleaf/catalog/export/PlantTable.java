package org.benchleaf.catalog.export;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.benchleaf.catalog.intake.Column;
import org.benchleaf.catalog.intake.ColumnMaps;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.CommonName;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.Synonym;

/// A plant as a row of the own format.
final class PlantTable {
    private PlantTable() {}

    static List<String> headings() {
        return ColumnMaps.ownPlants().columns().stream()
                .map(column -> column.headings().get(0))
                .toList();
    }

    /// A row for each source that states what is not shown, then the row of what is shown: of two rows of one
    /// plant the later one counts when they are loaded.
    static List<List<String>> everySource(PlantRecord plant) {
        List<List<String>> rows = new ArrayList<>();
        List<String> shown = cells(plant);
        String usual = shown.get(headings().indexOf("source"));
        Set<String> sources = new TreeSet<>();
        plant.otherFacts().forEach(fact -> sources.add(fact.source().text()));
        plant.synonyms().forEach(synonym -> sources.add(synonym.source().text()));
        for (String source : sources) {
            List<Fact<?>> stated = plant.otherFacts().stream()
                    .filter(fact -> fact.source().text().equals(source))
                    .toList();
            String synonyms = source.equals(usual) ? "" : synonyms(plant, source);
            if (!stated.isEmpty() || !synonyms.isEmpty()) {
                rows.add(row(plant, stated, source, synonyms));
            }
        }
        rows.add(shown);
        return rows;
    }

    private static List<String> row(PlantRecord plant, List<Fact<?>> stated, String source, String synonyms) {
        List<String> cells = new ArrayList<>();
        for (Column column : ColumnMaps.ownPlants().columns()) {
            cells.add(
                    switch (column.field()) {
                        case "key" -> plant.key().text();
                        case "name" -> plant.name().toString();
                        case "common_names", "fact_sources" -> "";
                        case "synonyms" -> synonyms;
                        case "source" -> source;
                        default -> fact(stated, column.field());
                    });
        }
        return cells;
    }

    static List<String> cells(PlantRecord plant) {
        List<Fact<?>> own = plant.facts().all().stream()
                .filter(fact -> !fact.inherited()
                        && Attributes.byId(fact.attribute().id()).isPresent())
                .toList();
        String usual = usual(own, plant);
        List<String> cells = new ArrayList<>();
        for (Column column : ColumnMaps.ownPlants().columns()) {
            cells.add(
                    switch (column.field()) {
                        case "key" -> plant.key().text();
                        case "name" -> plant.name().toString();
                        case "common_names" -> commonNames(plant, column.language());
                        case "synonyms" -> synonyms(plant, usual);
                        case "source" -> usual;
                        case "fact_sources" -> otherSources(own, usual);
                        default -> fact(own, column.field());
                    });
        }
        return cells;
    }

    private static String fact(List<Fact<?>> own, String attribute) {
        return own.stream()
                .filter(fact -> fact.attribute().id().equals(attribute))
                .findFirst()
                .map(Fact::text)
                .orElse("");
    }

    /// The source of most facts; where there are none that of the synonyms.
    private static String usual(List<Fact<?>> own, PlantRecord plant) {
        Map<String, Integer> counts = new HashMap<>();
        own.forEach(fact -> counts.merge(fact.source().text(), 1, Integer::sum));
        return counts.entrySet().stream()
                .max(Map.Entry.<String, Integer>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey)
                .orElseGet(() -> plant.synonyms().stream()
                        .findFirst()
                        .map(synonym -> synonym.source().text())
                        .orElse(""));
    }

    private static String otherSources(List<Fact<?>> own, String usual) {
        return own.stream()
                .filter(fact -> !fact.source().text().equals(usual))
                .map(fact -> fact.attribute().id() + "=" + fact.source().text().replace(';', ','))
                .sorted()
                .collect(Collectors.joining("; "));
    }

    private static String commonNames(PlantRecord plant, Locale language) {
        return plant.commonNames().stream()
                .filter(name -> name.language().equals(language))
                .map(CommonName::text)
                .collect(Collectors.joining("; "));
    }

    /// Those of the row's source: a row states synonyms of no other one.
    private static String synonyms(PlantRecord plant, String usual) {
        return plant.synonyms().stream()
                .filter(synonym -> synonym.source().text().equals(usual))
                .map(Synonym::text)
                .collect(Collectors.joining("; "));
    }
}
