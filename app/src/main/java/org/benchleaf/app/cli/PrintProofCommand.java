package org.benchleaf.app.cli;

import java.time.Clock;
import java.util.Optional;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.PrinterShelf;
import org.benchleaf.render.Calibration;
import org.benchleaf.render.PressSettings;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
        name = "proof",
        mixinStandardHelpOptions = true,
        description = "The cells of a stock paper as outlines, to be held against it.")
final class PrintProofCommand extends WorkspaceCommand {
    @Option(
            names = "--paper",
            paramLabel = "PAPER",
            defaultValue = "letter-30",
            description = "stock paper (default: ${DEFAULT-VALUE})")
    @SuppressWarnings("NullAway.Init")
    private String paper;

    @Option(names = "--printer", paramLabel = "NAME", description = "put right what this printer does wrong")
    private Optional<String> printer = Optional.empty();

    @Mixin
    private final OutOption out = new OutOption("proof.pdf");

    PrintProofCommand(Console console, Clock clock) {
        super(console, clock);
    }

    @Override
    int run(Benchleaf benchleaf) {
        Calibration calibration =
                printer.map(new PrinterShelf(benchleaf.workspace())::printer).orElse(Calibration.NONE);
        benchleaf
                .printing()
                .proof(benchleaf.printing().paper(paper), new PressSettings(0, false, calibration), out.file());
        console().out().println(out.file() + ": " + paper);
        return ErrorReport.DONE;
    }
}
