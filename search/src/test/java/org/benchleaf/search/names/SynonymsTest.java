package org.benchleaf.search.names;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.Synonym;
import org.benchleaf.search.InMemoryCatalogView;
import org.benchleaf.search.index.PlantIndex;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.fact.Source;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// Published pairs of names (synonyms.tsv) on the names of the demo catalog and USDA PLANTS. Authorities
/// disagree which of two is to be used, so that each must find the plant that bears the other.
class SynonymsTest {
    @Test
    void findsAPlantByEitherNameOfAPairAndSaysWhichIsOlder(@TempDir Path folder) {
        InMemoryCatalogView catalog = NameWorld.catalog();
        Map<String, PlantKey> byName = new HashMap<>();
        catalog.forEachPlant(plant -> byName.put(plant.name().toString(), plant.key()));
        List<String[]> pairs = NameWorld.lines("synonyms.tsv").stream()
                .filter(line -> !line.startsWith("#"))
                .map(line -> line.split("\t"))
                .filter(pair -> byName.containsKey(pair[0]) || byName.containsKey(pair[1]))
                .toList();
        assertThat(pairs).hasSizeGreaterThan(20);
        for (String[] pair : pairs) {
            PlantKey plant = Objects.requireNonNull(byName.getOrDefault(pair[1], byName.get(pair[0])));
            String other = byName.containsKey(pair[1]) ? pair[0] : pair[1];
            catalog.put(withSynonym(catalog.plant(plant).orElseThrow(), new Synonym(other, new Source(pair[2]))));
        }
        try (PlantIndex index = PlantIndex.open(folder, catalog)) {
            NameIndex names = new NameIndex(index);
            for (String[] pair : pairs) {
                for (String name : List.of(pair[0], pair[1])) {
                    NameHit first = names.find(name, 5).getFirst();
                    String accepted =
                            catalog.plant(first.plant()).orElseThrow().name().toString();
                    assertThat(first.how()).as(name).isIn(NameMatch.EXACT, NameMatch.SYNONYM);
                    assertThat(List.of(pair[0], pair[1])).as(name).contains(accepted);
                    assertThat(first.how() == NameMatch.EXACT).as(name).isEqualTo(accepted.equals(name));
                }
            }
        }
    }

    @Test
    void keepsBothWhenTwoAuthoritiesGiveOneSynonymToTwoPlants(@TempDir Path folder) {
        InMemoryCatalogView catalog = NameWorld.catalog();
        // Hydrangea petiolaris is given for H. anomala subsp. petiolaris here, and by another list for H. anomala
        PlantRecord other = withSynonym(
                org.benchleaf.search.Plants.plant(
                        90_001,
                        org.benchleaf.search.Plants.name("Hydrangea", "anomala"),
                        org.benchleaf.search.Plants.facts()),
                new Synonym("Hydrangea petiolaris", new Source("another list")));
        catalog.put(other);
        try (PlantIndex index = PlantIndex.open(folder, catalog)) {
            List<NameHit> hits = new NameIndex(index).find("Hydrangea petiolaris", 5);
            assertThat(hits.subList(0, 2)).extracting(NameHit::how).containsOnly(NameMatch.SYNONYM);
            assertThat(hits).extracting(NameHit::plant).contains(other.key());
        }
    }

    private static PlantRecord withSynonym(PlantRecord plant, Synonym synonym) {
        List<Synonym> synonyms = new ArrayList<>(plant.synonyms());
        synonyms.add(synonym);
        return new PlantRecord(
                plant.key(),
                plant.name(),
                plant.taxon(),
                plant.commonNames(),
                synonyms,
                plant.facts(),
                plant.otherFacts(),
                plant.retired());
    }
}
