package org.benchleaf.bench;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.benchleaf.catalog.Catalog;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.search.index.PlantIndex;
import org.benchleaf.search.substitute.Advised;
import org.benchleaf.search.substitute.Demand;
import org.benchleaf.search.substitute.Publication;
import org.benchleaf.search.substitute.PublishedAdvice;
import org.benchleaf.search.substitute.Purpose;
import org.benchleaf.search.substitute.SubstituteFinder;
import org.benchleaf.search.substitute.SubstituteQuery;
import org.benchleaf.shared.measure.HardinessZone;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.name.TaxonName;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Use;
import org.benchleaf.shared.stock.ContainerClass;
import org.benchleaf.shared.stock.StockSize;

/// Loads and indexes a made-up catalog, then asks for substitutes of 200 of its plants: the first three of each
/// group, judged and compared, facts and stock read from the database.
final class SubstituteBench {
    private static final int BATCH = 10_000;
    private static final int ASKED = 200;
    private static final int WARM = 20;
    private static final int SPECIES = 30;
    private static final int GENERA = 4;
    private static final YearWeek WEEK = new YearWeek(2026, 48);

    private SubstituteBench() {}

    static void run(int plants, PrintStream out) throws IOException {
        Path folder = Files.createTempDirectory("benchleaf-bench");
        try {
            run(plants, folder, out);
        } finally {
            NeedBench.delete(folder);
        }
    }

    private static void run(int plants, Path folder, PrintStream out) throws IOException {
        try (Catalog catalog = Catalog.create(folder.resolve("bench.db"))) {
            for (int from = 0; from < plants; from += BATCH) {
                catalog.apply(SyntheticCatalog.plan(catalog.view().revision(), from, Math.min(plants, from + BATCH)));
            }
            try (PlantIndex index = PlantIndex.open(folder.resolve("index"), catalog.view())) {
                List<SubstituteQuery> queries = queries(catalog, plants);
                SubstituteFinder finder = new SubstituteFinder(catalog.view(), index).knowing(advice(queries));
                for (int round = 0; round < WARM; round++) {
                    ask(finder, queries.subList(0, ASKED)); // other plants than those that are timed
                }
                Figures figures = ask(finder, queries.subList(ASKED, 2 * ASKED));
                out.printf("%,d plants: substitutes %s%n", plants, figures);
            }
        }
    }

    private static List<SubstituteQuery> queries(Catalog catalog, int plants) {
        SplittableRandom random = new SplittableRandom(4711);
        int every = Math.max(1, plants / (2 * ASKED));
        List<PlantRecord> originals = new ArrayList<>();
        int[] number = {0};
        catalog.view().forEachPlant(plant -> {
            if (number[0]++ % every == 0) {
                originals.add(plant);
            }
        });
        return originals.stream()
                .limit(2L * ASKED)
                .map(original -> query(original, random))
                .toList();
    }

    /// For every second original a list that is about as long as those on barberry and ivy: 30 species and four whole
    /// genera.
    private static PublishedAdvice advice(List<SubstituteQuery> queries) {
        SplittableRandom random = new SplittableRandom(815);
        List<BotanicalName> names =
                queries.stream().map(query -> query.original().name()).toList();
        List<Advised> rows = new ArrayList<>();
        for (int original = 0; original < names.size(); original += 2) {
            for (int row = 0; row < SPECIES + GENERA; row++) {
                BotanicalName instead = names.get(random.nextInt(names.size()));
                rows.add(new Advised(
                        TaxonName.of(names.get(original)),
                        row < SPECIES ? TaxonName.of(instead) : new TaxonName(instead.genus()),
                        new Publication("Publisher " + random.nextInt(8), Set.of(), "A list", "2026", "none")));
            }
        }
        return PublishedAdvice.of(rows);
    }

    private static SubstituteQuery query(PlantRecord original, SplittableRandom random) {
        Demand demand = new Demand(
                10 + random.nextInt(60),
                Optional.of(new StockSize.Container(ContainerClass.NO_3)),
                Optional.of(new YearWeek(2027, 10 + random.nextInt(12))),
                true);
        return new SubstituteQuery(
                original,
                random.nextBoolean() ? Purpose.NOT_SAID : Purpose.of(Use.values()[random.nextInt(Use.values().length)]),
                demand,
                Optional.empty(),
                List.of(WeighedWish.of(new Wish.HardyIn(new HardinessZone(8 + random.nextInt(6))))),
                WEEK,
                3);
    }

    private static Figures ask(SubstituteFinder finder, List<SubstituteQuery> queries) {
        int[] found = {0};
        Figures figures = Figures.of(
                queries.size(),
                number -> found[0] += finder.find(queries.get(number)).best().size());
        if (found[0] == 0) {
            throw new IllegalStateException("nothing was found: the benchmark measures nothing");
        }
        return figures;
    }
}
