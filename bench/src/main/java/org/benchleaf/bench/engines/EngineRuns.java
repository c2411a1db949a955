package org.benchleaf.bench.engines;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.stream.Stream;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.shared.need.Need;

/// Each engine asked all needs twice; the second round counts.
public final class EngineRuns {
    private EngineRuns() {}

    /// The lines of the wide table.
    public static Stream<String> lines(ImportPlan plan, int first) {
        return WideRows.of(plan, first);
    }

    /// @return nanoseconds of each need
    public static long[] sqlite(Path folder, Path lines, List<Need> needs) throws SQLException, IOException {
        try (Engine engine = Engine.open("jdbc:sqlite:" + folder.resolve("wide.db"));
                Stream<String> rows = Files.lines(lines)) {
            engine.insert(rows);
            engine.index("zmin", "form", "hmax", "free3");
            return asked(engine, needs);
        }
    }

    /// @return nanoseconds of each need
    public static long[] duckdb(Path lines, List<Need> needs) throws SQLException {
        try (Engine engine = Engine.open("jdbc:duckdb:")) {
            engine.copy(lines.toString());
            return asked(engine, needs);
        }
    }

    private static long[] asked(Engine engine, List<Need> needs) throws SQLException {
        List<NeedSql> statements = needs.stream().map(NeedSql::of).toList();
        long[] nanos = new long[statements.size()];
        for (int round = 0; round < 2; round++) {
            for (int at = 0; at < nanos.length; at++) {
                long before = System.nanoTime();
                engine.ask(statements.get(at));
                nanos[at] = System.nanoTime() - before;
            }
        }
        return nanos;
    }
}
