package org.benchleaf.app.cli;

import java.util.Optional;
import java.util.function.IntConsumer;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.PrinterShelf;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.service.PressOrder;
import org.benchleaf.app.service.PressOutcome;
import org.benchleaf.render.Calibration;
import org.benchleaf.render.PressSettings;
import org.benchleaf.shared.Problem;
import picocli.CommandLine.Option;

/// How a document is looked through and put on a printer.
final class PressOptions {
    @Option(
            names = "--strict",
            description = "print nothing when something should be put right; without it all that can be printed is")
    private boolean strict;

    @Option(
            names = "--no-check",
            description = "do not look for colors, photographs and codes that should be put right")
    private boolean unchecked;

    @Option(names = "--json", description = "tell what was found as JSON")
    private boolean json;

    @Option(
            names = "--printer",
            paramLabel = "NAME",
            description = "put right what this printer does wrong; see: benchleaf print calibrate")
    private Optional<String> printer = Optional.empty();

    /// Of a document that is made as a whole.
    PressOrder order(Benchleaf benchleaf) {
        return order(benchleaf, pages -> {});
    }

    PressOrder order(Benchleaf benchleaf, IntConsumer progress) {
        return order(benchleaf, 0, false, progress);
    }

    PressOrder order(Benchleaf benchleaf, double bleed, boolean cropMarks, IntConsumer progress) {
        Calibration calibration =
                printer.map(new PrinterShelf(benchleaf.workspace())::printer).orElse(Calibration.NONE);
        try {
            return new PressOrder(new PressSettings(bleed, cropMarks, calibration), !unchecked, strict, progress);
        } catch (IllegalArgumentException outOfRange) {
            throw new Refusal(Problem.of("print.bleed", Double.toString(bleed)));
        }
    }

    /// Tells what came of a print.
    ///
    /// @param written the line for a print that was made
    /// @return the exit code
    int report(PressOutcome outcome, String written, Benchleaf benchleaf, Console console) {
        if (json) {
            console.out().println(PressJson.of(outcome, benchleaf.wording()));
        } else {
            outcome.findings()
                    .forEach(
                            finding -> console.err().println(benchleaf.wording().problem(finding.problem())));
            if (outcome.pages() > 0) {
                console.out().println(written);
            } else if (strict) {
                console.err().println(benchleaf.wording().text("print.not-printed"));
            }
        }
        benchleaf.otherBases().forEach(line -> console.err().println(line));
        if (outcome.pages() == 0 && !strict) {
            return ErrorReport.FAILED;
        }
        return outcome.findings().isEmpty() ? ErrorReport.DONE : ErrorReport.FINDINGS;
    }
}
