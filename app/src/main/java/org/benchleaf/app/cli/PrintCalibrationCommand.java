package org.benchleaf.app.cli;

import java.time.Clock;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
        name = "calibration",
        mixinStandardHelpOptions = true,
        description = "A page to measure what a printer does wrong.")
final class PrintCalibrationCommand extends WorkspaceCommand {
    @Mixin
    private final SheetPaper paper = new SheetPaper();

    @Option(
            names = "--printer",
            paramLabel = "NAME",
            defaultValue = "office",
            description = "what the printer or tray is called (default: ${DEFAULT-VALUE})")
    @SuppressWarnings("NullAway.Init")
    private String printer;

    @Mixin
    private final OutOption out = new OutOption("calibration.pdf");

    PrintCalibrationCommand(Console console, Clock clock) {
        super(console, clock);
    }

    @Override
    int run(Benchleaf benchleaf) {
        benchleaf.printing().calibration(paper.format(benchleaf), printer, out.file());
        console().out().println(out.file() + ": " + printer);
        return ErrorReport.DONE;
    }
}
