package org.benchleaf.catalog.export;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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

    static List<String> cells(PlantRecord plant) {
        List<Fact<?>> own = shown(plant);
        String usual = usual(own, plant.synonyms());
        return cells(
                plant,
                new Row(
                        plant.commonNames(),
                        plant.synonyms().stream()
                                .filter(synonym -> synonym.source().text().equals(usual))
                                .toList(),
                        own,
                        usual,
                        ""));
    }

    /// What is shown and was not taken over from the taxon.
    static List<Fact<?>> shown(PlantRecord plant) {
        return plant.facts().all().stream()
                .filter(fact -> !fact.inherited()
                        && Attributes.byId(fact.attribute().id()).isPresent())
                .toList();
    }

    /// What one row says of a plant.
    ///
    /// @param synonyms those of the usual source: a row states synonyms of no other one
    /// @param usual the source of what names no other one
    /// @param rank a word, or empty
    record Row(List<CommonName> commonNames, List<Synonym> synonyms, List<Fact<?>> facts, String usual, String rank) {}

    static List<String> cells(PlantRecord plant, Row row) {
        List<String> cells = new ArrayList<>();
        for (Column column : ColumnMaps.ownPlants().columns()) {
            cells.add(
                    switch (column.field()) {
                        case "key" -> plant.key().text();
                        case "name" -> plant.name().toString();
                        case "common_names" -> commonNames(row.commonNames(), column.language());
                        case "synonyms" ->
                            row.synonyms().stream().map(Synonym::text).collect(Collectors.joining("; "));
                        case "source" -> row.usual();
                        case "fact_sources" -> otherSources(row.facts(), row.usual());
                        case "rank" -> row.rank();
                        default -> fact(row.facts(), column.field());
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
    static String usual(List<Fact<?>> own, List<Synonym> synonyms) {
        Map<String, Integer> counts = new HashMap<>();
        own.forEach(fact -> counts.merge(fact.source().text(), 1, Integer::sum));
        return counts.entrySet().stream()
                .max(Map.Entry.<String, Integer>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey)
                .orElseGet(() -> synonyms.stream()
                        .map(synonym -> synonym.source().text())
                        .min(Comparator.naturalOrder())
                        .orElse(""));
    }

    private static String otherSources(List<Fact<?>> own, String usual) {
        return own.stream()
                .filter(fact -> !fact.source().text().equals(usual))
                .map(fact -> fact.attribute().id() + "=" + fact.source().text().replace(";", "\\;"))
                .sorted()
                .collect(Collectors.joining("; "));
    }

    private static String commonNames(List<CommonName> names, Locale language) {
        return names.stream()
                .filter(name -> name.language().equals(language))
                .map(CommonName::text)
                .collect(Collectors.joining("; "));
    }
}
