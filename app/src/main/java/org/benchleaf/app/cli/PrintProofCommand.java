package org.benchleaf.app.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Callable;
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
final class PrintProofCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Option(
            names = "--paper",
            paramLabel = "PAPER",
            defaultValue = "letter-30",
            description = "stock paper (default: ${DEFAULT-VALUE})")
    @SuppressWarnings("NullAway.Init")
    private String paper;

    @Option(names = "--printer", paramLabel = "NAME", description = "put right what this printer does wrong")
    private Optional<String> printer = Optional.empty();

    @Option(
            names = {"-o", "--out"},
            paramLabel = "FILE",
            defaultValue = "proof.pdf",
            description = "the PDF to write (default: ${DEFAULT-VALUE})")
    @SuppressWarnings("NullAway.Init")
    private Path file;

    PrintProofCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            Calibration calibration = printer.map(new PrinterShelf(benchleaf.workspace())::printer)
                    .orElse(Calibration.NONE);
            benchleaf
                    .printing()
                    .proof(benchleaf.printing().paper(paper), new PressSettings(0, false, calibration), file);
            console.out().println(file + ": " + paper);
        }
        return ErrorReport.DONE;
    }
}
