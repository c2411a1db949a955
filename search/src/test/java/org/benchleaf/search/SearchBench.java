package org.benchleaf.search;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.benchleaf.search.index.PlantIndex;
import org.benchleaf.shared.need.Need;

/// Times needs over a made-up catalog read from `items.csv` and `stock.csv`, with facts and stock from memory:
/// `SearchBench ITEMS_FOLDER NEEDS_CSV`. Not a test.
public final class SearchBench {
    private static final int ROUNDS = 5;

    private SearchBench() {}

    public static void main(String[] arguments) throws IOException {
        PrintStream out = System.out;
        InMemoryCatalogView catalog = BenchFiles.catalog(Path.of(arguments[0]));
        List<Need> needs = BenchFiles.needs(Path.of(arguments[1]));
        Path folder = Files.createTempDirectory("search-bench");
        long start = System.nanoTime();
        PlantIndex.open(folder, catalog).close();
        long built = System.nanoTime();
        try (PlantIndex index = PlantIndex.open(folder, catalog)) {
            out.printf("build %.1f s, open %.1f s%n", (built - start) / 1e9, (System.nanoTime() - built) / 1e9);
            NeedSearch search = new NeedSearch(catalog, index);
            for (int round = 0; round < ROUNDS; round++) {
                report(out, "needs, round " + round, times(search, needs));
            }
        }
        // wishes never asked before, on warm code: every distinct value is judged anew
        try (PlantIndex index = PlantIndex.open(folder, catalog)) {
            report(out, "needs, first time asked", times(new NeedSearch(catalog, index), needs));
        }
        System.gc();
        long used = Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
        out.printf("live heap with the catalog itself %d MiB%n", used >> 20);
    }

    private static double[] times(NeedSearch search, List<Need> needs) {
        double[] times = new double[needs.size()];
        for (int i = 0; i < times.length; i++) {
            long before = System.nanoTime();
            search.answer(NeedQuery.of(needs.get(i), Plants.NOW));
            times[i] = (System.nanoTime() - before) / 1e6;
        }
        return times;
    }

    private static void report(PrintStream out, String what, double[] times) {
        Arrays.sort(times);
        out.printf(
                "%s: p50 %.2f ms, p95 %.2f ms, max %.2f ms%n",
                what, times[times.length / 2], times[times.length * 95 / 100], times[times.length - 1]);
    }
}
