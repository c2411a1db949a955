package org.benchleaf.bench;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.benchleaf.catalog.Catalog;
import org.benchleaf.search.NeedQuery;
import org.benchleaf.search.NeedSearch;
import org.benchleaf.search.facet.Facet;
import org.benchleaf.search.index.PlantIndex;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.Need;

/// Loads and indexes a made-up catalog, then answers 200 needs: the first twenty plants of each, with every
/// reason, the totals and what to give up, facts and stock read from the database.
final class NeedBench {
    private static final int BATCH = 10_000;
    private static final int NEEDS = 200;
    /// Needs asked to warm up, so many; the others are then asked for the first time.
    private static final int WARMING = 100;

    private static final int ROUNDS = 40;
    private static final YearWeek WEEK = new YearWeek(2026, 48);

    private NeedBench() {}

    static void run(int plants, PrintStream out) throws IOException {
        Path folder = Files.createTempDirectory("benchleaf-bench");
        try {
            run(plants, folder, out);
        } finally {
            delete(folder);
        }
    }

    private static void run(int plants, Path folder, PrintStream out) throws IOException {
        Path database = folder.resolve("bench.db");
        long start = System.nanoTime();
        try (Catalog catalog = Catalog.create(database)) {
            for (int from = 0; from < plants; from += BATCH) {
                catalog.apply(SyntheticCatalog.plan(catalog.view().revision(), from, Math.min(plants, from + BATCH)));
            }
            long loaded = System.nanoTime();
            try (PlantIndex index = PlantIndex.open(folder.resolve("index"), catalog.view())) {
                long indexed = System.nanoTime();
                NeedSearch search = new NeedSearch(catalog.view(), index);
                List<Need> needs = SyntheticNeeds.needs(NEEDS);
                ask(search, needs.subList(0, WARMING)); // warms the machine, not the plants that the others show
                Figures first = ask(search, needs.subList(WARMING, NEEDS));
                for (int round = 0; round < ROUNDS; round++) {
                    ask(search, needs);
                }
                Figures figures = ask(search, needs);
                Figures ranking = rank(index, needs);
                long again = System.nanoTime();
                index.rebuild();
                long rebuilt = System.nanoTime();
                out.printf(
                        Locale.ROOT,
                        "%,d plants: load %.1f s, index %.1f s and, code warm, %.1f s; need %s; asked for the first time %s; ranking alone %s;"
                                + " live heap %d MiB, database %d MiB, index %d MiB%n",
                        plants,
                        (loaded - start) / 1e9,
                        (indexed - loaded) / 1e9,
                        (rebuilt - again) / 1e9,
                        figures,
                        first,
                        ranking,
                        Memory.liveMiB(),
                        size(database),
                        size(folder.resolve("index")));
            }
        }
    }

    private static Figures ask(NeedSearch search, List<Need> needs) {
        int[] matches = {0};
        Figures figures = Figures.of(
                needs.size(),
                number -> matches[0] += search.answer(NeedQuery.of(needs.get(number), WEEK))
                        .matches()
                        .size());
        if (matches[0] == 0) {
            throw new IllegalStateException("nothing was found: the benchmark measures nothing");
        }
        return figures;
    }

    /// The pass over all plants with totals, facets and what to loosen, without reading the best from the catalog.
    private static Figures rank(PlantIndex index, List<Need> needs) {
        return Figures.of(needs.size(), number -> index.propose(needs.get(number), "", Facet.USUAL, WEEK, 20));
    }

    private static long size(Path place) throws IOException {
        try (Stream<Path> files = Files.walk(place)) {
            return files.filter(Files::isRegularFile)
                            .mapToLong(file -> file.toFile().length())
                            .sum()
                    >> 20;
        }
    }

    static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            files.sorted(Comparator.reverseOrder())
                    .forEach(file -> file.toFile().delete());
        }
    }
}
