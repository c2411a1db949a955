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

/// The needs of [NeedBench] put to SQLite and DuckDB on the same plants, after the search itself.
final class EngineBench {
    private static final int BATCH = 10_000;

    private static final int NEEDS = 200;
    /// In larger catalogs the other engines are asked fewer needs, for each takes them a third of a second.
    private static final int MANY = 300_000;

    private static final int FEW_NEEDS = 50;

    private EngineBench() {}

    static void run(int plants, PrintStream out) throws IOException {
        NeedBench.run(plants, out);
        others(plants, out);
    }

    /// The other engines alone.
    static void others(int plants, PrintStream out) throws IOException {
        List<Need> needs = SyntheticNeeds.needs(plants > MANY ? FEW_NEEDS : NEEDS);
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
