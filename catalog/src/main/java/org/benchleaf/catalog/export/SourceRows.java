package org.benchleaf.catalog.export;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.benchleaf.catalog.model.CommonName;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.OwnWord;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.Synonym;

/// All that is stated of a plant as rows of the own format: what is not shown a row a source, then what is shown,
/// that of reference works first and the shop's own word last.
///
/// Of rows of one rank the later one counts when they are loaded, so another catalog chooses the same.
final class SourceRows {
    private static final String REFERENCE = "reference";
    private static final String OWN = "own";

    private final PlantRecord plant;
    private final OwnWord own;
    private final List<List<String>> rows = new ArrayList<>();

    private SourceRows(PlantRecord plant, OwnWord own) {
        this.plant = plant;
        this.own = own;
    }

    static List<List<String>> of(PlantRecord plant, OwnWord own) {
        SourceRows rows = new SourceRows(plant, own);
        PlantTable.Row reference = rows.shown(REFERENCE);
        PlantTable.Row ours = rows.shown(OWN);
        rows.notShown(REFERENCE, reference);
        rows.notShown(OWN, ours);
        rows.add(reference);
        rows.add(ours);
        if (rows.rows.isEmpty()) {
            rows.rows.add(PlantTable.cells(plant));
        }
        return rows.rows;
    }

    private String rank(boolean isOwn) {
        return isOwn ? OWN : REFERENCE;
    }

    private List<Fact<?>> ranked(List<Fact<?>> facts, String rank) {
        return facts.stream().filter(fact -> rank(own.holds(fact)).equals(rank)).toList();
    }

    private List<Synonym> synonyms(String rank) {
        return plant.synonyms().stream()
                .filter(synonym -> rank(own.synonyms().contains(synonym)).equals(rank))
                .toList();
    }

    private static List<Synonym> by(String source, List<Synonym> synonyms) {
        return synonyms.stream()
                .filter(synonym -> synonym.source().text().equals(source))
                .toList();
    }

    private PlantTable.Row shown(String rank) {
        List<CommonName> common = plant.commonNames().stream()
                .filter(name -> rank(own.commonNames().contains(name)).equals(rank))
                .toList();
        List<Synonym> synonyms = synonyms(rank);
        List<Fact<?>> facts = new ArrayList<>(ranked(PlantTable.shown(plant), rank));
        String usual = PlantTable.usual(facts, synonyms);
        // what this source states beside goes into its row, or two rows would name the same sources
        Set<String> attributes = ids(facts);
        ranked(plant.otherFacts(), rank).stream()
                .filter(fact -> fact.source().text().equals(usual)
                        && !attributes.contains(fact.attribute().id()))
                .forEach(facts::add);
        return new PlantTable.Row(common, by(usual, synonyms), facts, usual, rank);
    }

    private static Set<String> ids(List<Fact<?>> facts) {
        return facts.stream().map(fact -> fact.attribute().id()).collect(Collectors.toCollection(HashSet::new));
    }

    private void notShown(String rank, PlantTable.Row shown) {
        Map<String, List<Fact<?>>> bySource = new TreeMap<>();
        for (Fact<?> fact : ranked(plant.otherFacts(), rank)) {
            if (!shown.facts().contains(fact)) {
                bySource.computeIfAbsent(fact.source().text(), source -> new ArrayList<>())
                        .add(fact);
            }
        }
        List<Synonym> synonyms = synonyms(rank);
        synonyms.forEach(synonym -> bySource.computeIfAbsent(synonym.source().text(), source -> new ArrayList<>()));
        bySource.forEach((source, facts) -> add(new PlantTable.Row(
                List.of(), source.equals(shown.usual()) ? List.of() : by(source, synonyms), facts, source, rank)));
    }

    private void add(PlantTable.Row row) {
        if (!row.facts().isEmpty()
                || !row.synonyms().isEmpty()
                || !row.commonNames().isEmpty()) {
            rows.add(PlantTable.cells(plant, row));
        }
    }
}
