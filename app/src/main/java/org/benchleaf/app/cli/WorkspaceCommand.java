package org.benchleaf.app.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Callable;
import org.benchleaf.app.Benchleaf;
import picocli.CommandLine.Mixin;

/// A command that works on one open workspace.
abstract class WorkspaceCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    WorkspaceCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    final Console console() {
        return console;
    }

    final Clock clock() {
        return clock;
    }

    @Override
    public final Integer call() {
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            return run(benchleaf);
        }
    }

    /// @return the exit code
    abstract int run(Benchleaf benchleaf);

    /// What was written: `sheet.pdf: 2 pages`.
    ///
    /// @param thing one of what was counted
    static String written(Path file, int count, String thing) {
        return file + ": " + count + " " + thing + (count == 1 ? "" : "s");
    }
}
