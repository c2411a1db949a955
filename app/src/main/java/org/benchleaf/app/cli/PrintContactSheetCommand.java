package org.benchleaf.app.cli;

import java.nio.file.Path;
import java.time.Clock;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

@Command(
        name = "contact-sheet",
        mixinStandardHelpOptions = true,
        description =
                "Every document of the shop's hardest plants, in every size, language and palette, to be looked at.")
final class PrintContactSheetCommand extends WorkspaceCommand {
    @Option(
            names = {"-o", "--out"},
            paramLabel = "FOLDER",
            defaultValue = "contact-sheet",
            description = "where the PDFs are written (default: ${DEFAULT-VALUE})")
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    PrintContactSheetCommand(Console console, Clock clock) {
        super(console, clock);
    }

    @Override
    int run(Benchleaf benchleaf) {
        int refused = benchleaf
                .contactSheet()
                .print(folder, benchleaf.now(), console().out()::println);
        return refused == 0 ? ErrorReport.DONE : ErrorReport.FINDINGS;
    }
}
