package org.benchleaf.bench;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.benchleaf.catalog.Catalog;
import org.benchleaf.search.NeedQuery;
import org.benchleaf.search.NeedSearch;
import org.benchleaf.search.index.PlantIndex;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.Need;

/// Loads and indexes a made-up catalog, then answers 200 needs: the first twenty plants of each, with every
/// reason,
/// the
/// totals and what to give up, facts and stock read from the database.
final class NeedBench {
    private static final int BATCH = 10_000;
    private static final int NEEDS = 200;
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
                ask(search, needs); // warm
                Memory.forgetPeak();
                Figures figures = ask(search, needs);
                out.printf(
                        "%,d plants: load %.1f s, index %.1f s, need %s; live heap %d MiB, database %d MiB, index %d MiB%n",
                        plants,
                        (loaded - start) / 1e9,
                        (indexed - loaded) / 1e9,
                        figures,
                        Memory.liveMiB(),
                        size(database),
                        size(folder.resolve("index")));
            }
        }
    }

    private static Figures ask(NeedSearch search, List<Need> needs) {
        long[] nanos = new long[needs.size()];
        int matches = 0;
        for (int i = 0; i < nanos.length; i++) {
            long before = System.nanoTime();
            matches += search.answer(NeedQuery.of(needs.get(i), WEEK)).matches().size();
            nanos[i] = System.nanoTime() - before;
        }
        if (matches == 0) {
            throw new IllegalStateException("nothing was found: the benchmark measures nothing");
        }
        return new Figures(nanos);
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
