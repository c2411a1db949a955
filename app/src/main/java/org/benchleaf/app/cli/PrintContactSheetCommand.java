package org.benchleaf.app.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Callable;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
        name = "contact-sheet",
        mixinStandardHelpOptions = true,
        description =
                "Every document of the shop's hardest plants, in every size, language and palette, to be looked at.")
final class PrintContactSheetCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Option(
            names = {"-o", "--out"},
            paramLabel = "FOLDER",
            defaultValue = "contact-sheet",
            description = "where the PDFs are written (default: ${DEFAULT-VALUE})")
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    PrintContactSheetCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            int refused = benchleaf.contactSheet().print(folder, benchleaf.now(), console.out()::println);
            return refused == 0 ? ErrorReport.DONE : ErrorReport.FINDINGS;
        }
    }
}
