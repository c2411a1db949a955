package org.benchleaf.bench;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import org.benchleaf.bench.engines.EngineRuns;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.shared.need.Need;

/// The needs of [NeedBench] put to SQLite and DuckDB on the same plants.
final class EngineBench {
    private static final int BATCH = 10_000;

    private EngineBench() {}

    static void run(int plants, PrintStream out) throws IOException {
        NeedBench.run(plants, out);
        List<Need> needs = SyntheticNeeds.needs(200);
        Path folder = Files.createTempDirectory("benchleaf-engines");
        Path file = folder.resolve("items.csv");
        try (BufferedWriter lines = Files.newBufferedWriter(file)) {
            for (int from = 0; from < plants; from += BATCH) {
                int first = from;
                for (String line :
                        (Iterable<String>) EngineRuns.lines(
                                SyntheticCatalog.plan(new CatalogRevision(0), from, Math.min(plants, from + BATCH)),
                                first)::iterator) {
                    lines.write(line);
                    lines.newLine();
                }
            }
        }
        try {
            out.printf("%,d plants, SQLite: %s%n", plants, new Figures(EngineRuns.sqlite(folder, file, needs)));
            out.printf("%,d plants, DuckDB: %s%n", plants, new Figures(EngineRuns.duckdb(file, needs)));
        } catch (SQLException failed) {
            out.println("not run: " + failed.getMessage());
        }
    }
}
