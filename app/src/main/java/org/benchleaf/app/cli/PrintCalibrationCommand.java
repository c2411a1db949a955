package org.benchleaf.app.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Callable;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.render.SheetFormat;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
        name = "calibration",
        mixinStandardHelpOptions = true,
        description = "A page to measure what a printer does wrong.")
final class PrintCalibrationCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Option(
            names = "--paper",
            paramLabel = "PAPER",
            defaultValue = "letter",
            description = "letter or a4 (default: ${DEFAULT-VALUE})")
    @SuppressWarnings("NullAway.Init")
    private SheetFormat format;

    @Option(
            names = "--printer",
            paramLabel = "NAME",
            defaultValue = "office",
            description = "what the printer or tray is called (default: ${DEFAULT-VALUE})")
    @SuppressWarnings("NullAway.Init")
    private String printer;

    @Option(
            names = {"-o", "--out"},
            paramLabel = "FILE",
            defaultValue = "calibration.pdf",
            description = "the PDF to write (default: ${DEFAULT-VALUE})")
    @SuppressWarnings("NullAway.Init")
    private Path file;

    PrintCalibrationCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            benchleaf.printing().calibration(format, printer, file);
            console.out().println(file + ": " + printer);
        }
        return ErrorReport.DONE;
    }
}
