package org.benchleaf.app.cli;

import java.time.Clock;
import java.util.Locale;
import java.util.Map;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.PrinterShelf;
import org.benchleaf.app.Refusal;
import org.benchleaf.render.Calibration;
import org.benchleaf.shared.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

@Command(
        name = "calibrate",
        mixinStandardHelpOptions = true,
        description = "Keeps what was measured on the calibration page of a printer.")
final class PrintCalibrateCommand extends WorkspaceCommand {
    @Option(
            names = "--printer",
            paramLabel = "NAME",
            required = true,
            description = "what the printer or tray is called")
    @SuppressWarnings("NullAway.Init")
    private String printer;

    @Option(
            names = "--measured",
            paramLabel = "A,B,C,D",
            required = true,
            description = "the four lengths in mm, for example 19.2,20.5,149.4,200")
    @SuppressWarnings("NullAway.Init")
    private String measured;

    PrintCalibrateCommand(Console console, Clock clock) {
        super(console, clock);
    }

    @Override
    int run(Benchleaf benchleaf) {
        Calibration calibration = calibration();
        new PrinterShelf(benchleaf.workspace()).keep(printer, calibration);
        console()
                .out()
                .println(benchleaf
                        .wording()
                        .text(
                                "calibration.kept",
                                Map.of(
                                        "printer", printer,
                                        "right", mm(calibration.rightMm()),
                                        "down", mm(calibration.downMm()),
                                        "across", percent(calibration.scaleX()),
                                        "along", percent(calibration.scaleY()))));
        return ErrorReport.DONE;
    }

    private Calibration calibration() {
        String[] lengths = measured.split(",", -1);
        try {
            if (lengths.length == 4) {
                return Calibration.measured(
                        Double.parseDouble(lengths[0].strip()),
                        Double.parseDouble(lengths[1].strip()),
                        Double.parseDouble(lengths[2].strip()),
                        Double.parseDouble(lengths[3].strip()));
            }
        } catch (IllegalArgumentException notLengths) {
            // said below, like a number too few
        }
        throw new Refusal(Problem.of("print.measured", measured));
    }

    private static String mm(double length) {
        return String.format(Locale.ROOT, "%+.2f", length);
    }

    private static String percent(double scale) {
        return String.format(Locale.ROOT, "%+.2f", (scale - 1) * 100);
    }
}
