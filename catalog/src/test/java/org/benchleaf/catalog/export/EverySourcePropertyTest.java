package org.benchleaf.catalog.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.benchleaf.catalog.Catalog;
import org.benchleaf.catalog.Drafts;
import org.benchleaf.catalog.export.CatalogExport.Format;
import org.benchleaf.catalog.intake.ColumnMaps;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.catalog.intake.ImportPlanner;
import org.benchleaf.catalog.intake.PlantDraft;
import org.benchleaf.catalog.intake.Sheet;
import org.benchleaf.catalog.intake.SheetReader;
import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.CommonName;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.Synonym;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.name.BotanicalName;

/// Whatever lists of whatever rank were loaded, and whomever the shop believes: what is written out with every
/// source makes another catalog the same, down to which fact is shown and whose word outranks which.
class EverySourcePropertyTest {
    private static final List<Source> SOURCES = Stream.of(
                    "a list", "Rutgers; USDA", "x=y; z", "a handbook", "it's \\ odd")
            .map(Source::new)
            .toList();
    private static final List<BotanicalName> NAMES =
            List.of(Drafts.RED_MAPLE, Drafts.OCTOBER_GLORY, BotanicalName.ofSpecies("Itea", "virginica"));
    private static final List<String> HEIGHTS = List.of("3-5 ft", "40-60 ft", "12 m");
    private static final List<String> HABITS = List.of("rounded", "oval", "vase");
    private static final List<String> BLOOMS = List.of("Apr-May", "Nov-Feb", "May");

    @Property(tries = 60)
    void bringsAnotherCatalogToTheSameState(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) throws IOException {
        Random random = new Random(seed);
        Path folder = Files.createTempDirectory("benchleaf-sources");
        List<String> believed =
                random.nextBoolean() ? List.of() : List.of(any(SOURCES, random).text());
        try (Catalog first = Catalog.create(folder.resolve("first.db"));
                Catalog second = Catalog.create(folder.resolve("second.db"))) {
            for (int loads = 1 + random.nextInt(5); loads > 0; loads--) {
                ImportPlan.Rank rank = any(List.of(ImportPlan.Rank.values()), random);
                first.apply(Drafts.plan(first, rank, plants(random), List.of()));
            }
            first.prefer(believed);
            second.prefer(believed);

            ImportPlan again = plan(export(first), first);
            assertThat(first.rehearse(again, 10).entries()).isEmpty();

            second.apply(plan(export(first), second));
            assertThat(state(second)).isEqualTo(state(first));
            assertThat(export(second)).isEqualTo(export(first));
        } finally {
            try (Stream<Path> files = Files.walk(folder)) {
                files.sorted(Comparator.reverseOrder())
                        .forEach(file -> file.toFile().delete());
            }
        }
    }

    private static <T> T any(List<T> of, Random random) {
        return of.get(random.nextInt(of.size()));
    }

    private static List<PlantDraft> plants(Random random) {
        List<PlantDraft> plants = new ArrayList<>();
        for (BotanicalName name : NAMES) {
            if (random.nextInt(4) == 0) {
                continue;
            }
            List<Fact<?>> facts = new ArrayList<>();
            state(facts, Attributes.HEIGHT, HEIGHTS, random);
            state(facts, Attributes.HABIT, HABITS, random);
            state(facts, Attributes.BLOOM, BLOOMS, random);
            List<CommonName> common = random.nextBoolean()
                    ? List.of(new CommonName(any(List.of("red maple", "swamp maple"), random), Locale.ENGLISH))
                    : List.of();
            List<Synonym> synonyms = random.nextBoolean()
                    ? List.of(new Synonym(any(List.of("Acer coccineum", "Acer glaucum"), random), any(SOURCES, random)))
                    : List.of();
            plants.add(new PlantDraft(Drafts.plant(name).place(), Optional.empty(), name, common, synonyms, facts));
        }
        return plants;
    }

    private static <T> void state(List<Fact<?>> facts, Attribute<T> attribute, List<String> texts, Random random) {
        if (random.nextBoolean()) {
            facts.add(Drafts.fact(attribute, any(texts, random), any(SOURCES, random)));
        }
    }

    private static byte[] export(Catalog catalog) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        CatalogExport.plants(catalog.view(), Format.CSV, false, true, out);
        return out.toByteArray();
    }

    private static ImportPlan plan(byte[] bytes, Catalog of) {
        try (Sheet sheet = SheetReader.open("plants.csv", bytes)) {
            ImportPlan plan = ImportPlanner.plan(sheet, ColumnMaps.ownPlants(), of.names());
            assertThat(plan.rowsLeftOut()).isZero();
            return plan;
        }
    }

    /// All that is known of every plant, with what of it is the shop's own word.
    private static List<String> state(Catalog catalog) {
        List<String> plants = new ArrayList<>();
        catalog.view().forEachStated((plant, own) -> {
            List<String> lines = new ArrayList<>();
            plant.facts().all().forEach(fact -> lines.add("shown " + fact + " own " + own.holds(fact)));
            plant.otherFacts().forEach(fact -> lines.add("other " + fact + " own " + own.holds(fact)));
            plant.synonyms()
                    .forEach(name -> lines.add(name + " own " + own.synonyms().contains(name)));
            plant.commonNames()
                    .forEach(
                            name -> lines.add(name + " own " + own.commonNames().contains(name)));
            lines.sort(Comparator.naturalOrder());
            plants.add(plant.key() + " " + plant.name() + " " + lines);
        });
        return plants;
    }
}
