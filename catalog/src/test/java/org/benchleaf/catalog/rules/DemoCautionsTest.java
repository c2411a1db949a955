package org.benchleaf.catalog.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.benchleaf.catalog.Catalog;
import org.benchleaf.catalog.intake.ColumnMaps;
import org.benchleaf.catalog.intake.ImportPlanner;
import org.benchleaf.catalog.intake.RawRow;
import org.benchleaf.catalog.intake.Sheet;
import org.benchleaf.catalog.intake.SheetReader;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.Synonym;
import org.benchleaf.catalog.names.NameReader;
import org.benchleaf.demo.DemoCatalog;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.plant.Creature;
import org.benchleaf.shared.plant.Hazard;
import org.benchleaf.shared.rule.Destination;
import org.benchleaf.shared.rule.SaleVerdict.Answer;
import org.benchleaf.shared.rule.Shipment;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// The demo catalog against `toxic-to-animals.csv` (ASPCA Animal Poison Control list, 2024 copy; facts only) and
/// against its own sale rules.
class DemoCautionsTest {
    private static final Map<String, Creature> ANIMALS =
            Map.of("cat", Creature.CATS, "dog", Creature.DOGS, "horse", Creature.HORSES);

    @TempDir
    static Path folder;

    private static Catalog catalog;

    @BeforeAll
    static void loadDemo() throws IOException {
        catalog = Catalog.create(folder.resolve("catalog.db"));
        for (String file : DemoCatalog.plantFiles()) {
            try (InputStream content = DemoCatalog.open(file);
                    Sheet sheet = SheetReader.open(file, content.readAllBytes())) {
                catalog.apply(ImportPlanner.plan(sheet, ColumnMaps.ownPlants(), catalog.names()));
            }
        }
        DemoRules.lists().forEach(catalog::load);
    }

    @AfterAll
    static void close() {
        catalog.close();
    }

    @Test
    void everyPlantOnThePoisonListCarriesTheCautionForThoseAnimals() throws IOException {
        Map<String, Set<Creature>> poisonous = poisonous();
        List<String> missing = new ArrayList<>();
        List<String> concerned = new ArrayList<>();
        catalog.view().forEachPlant(plant -> {
            Set<Creature> wanted = wanted(plant, poisonous);
            if (!wanted.isEmpty()) {
                concerned.add(plant.name().toString());
                wanted.removeAll(cautioned(plant));
                if (!wanted.isEmpty()) {
                    missing.add(plant.name() + " " + wanted);
                }
            }
        });

        assertThat(missing).isEmpty();
        assertThat(concerned).hasSizeGreaterThan(60);
    }

    @Test
    void noDemoPlantIsProhibitedWhereItIsGrown() {
        Shipment here = Shipment.to(Destination.read("PA").orThrow(), java.time.LocalDate.of(2026, 11, 25));
        List<String> barred = new ArrayList<>();
        catalog.view().forEachPlant(plant -> {
            Answer answer = plant.facts()
                    .value(Attributes.SALE_RULES)
                    .orElseThrow()
                    .at(here)
                    .answer();
            if (answer != Answer.NO_RULE) {
                barred.add(plant.name() + " " + answer);
            }
        });

        assertThat(barred).isEmpty();
    }

    private static Set<Creature> wanted(PlantRecord plant, Map<String, Set<Creature>> poisonous) {
        Set<Creature> wanted = EnumSet.noneOf(Creature.class);
        List<Synonym> synonyms = new ArrayList<>(plant.synonyms());
        plant.taxon().flatMap(key -> catalog.view().plant(key)).ifPresent(taxon -> synonyms.addAll(taxon.synonyms()));
        Stream.concat(
                        Stream.of(plant.name()),
                        synonyms.stream().flatMap(synonym -> NameReader.read(synonym.text()).known().stream()))
                .forEach(name -> {
                    wanted.addAll(poisonous.getOrDefault(name.genus(), Set.of()));
                    wanted.addAll(poisonous.getOrDefault(key(name), Set.of()));
                });
        return wanted;
    }

    /// Livestock takes in horses.
    private static Set<Creature> cautioned(PlantRecord plant) {
        Set<Creature> whom = EnumSet.noneOf(Creature.class);
        plant.facts().value(Attributes.CAUTIONS).orElse(List.of()).stream()
                .filter(caution -> caution.hazard() == Hazard.TOXIC)
                .forEach(caution -> whom.addAll(caution.whom()));
        if (whom.contains(Creature.LIVESTOCK)) {
            whom.add(Creature.HORSES);
        }
        return whom;
    }

    /// By genus for rows that mean the genus (`Iris species`), by genus and stem of the species for the others.
    private static Map<String, Set<Creature>> poisonous() throws IOException {
        Map<String, Set<Creature>> poisonous = new HashMap<>();
        try (InputStream file =
                        Objects.requireNonNull(DemoCautionsTest.class.getResourceAsStream("toxic-to-animals.csv"));
                Sheet sheet = SheetReader.open("toxic-to-animals.csv", file.readAllBytes())) {
            for (RawRow row : sheet.rows().toList()) {
                if (row.cells().get(3).equals("Non-toxic")) {
                    continue; // Gypsophila elegans: the list's own text says so
                }
                String[] words = row.cells().get(0).split("[\\s\u00a0]+");
                boolean genus = words[1].matches("(?i)spp?\\.?|species|and");
                String key = genus ? words[0] : words[0] + " " + NameStem.stem(words[1]);
                Set<Creature> whom = poisonous.computeIfAbsent(key, fresh -> EnumSet.noneOf(Creature.class));
                for (String animal : row.cells().get(2).split(";")) {
                    whom.add(Objects.requireNonNull(ANIMALS.get(animal)));
                }
            }
        }
        return poisonous;
    }

    private static String key(BotanicalName name) {
        return name.genus() + " "
                + name.species().map(epithet -> NameStem.stem(epithet.text())).orElse("");
    }
}
