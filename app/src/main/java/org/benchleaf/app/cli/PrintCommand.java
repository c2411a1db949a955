package org.benchleaf.app.cli;

import java.time.Clock;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

@Command(
        name = "print",
        mixinStandardHelpOptions = true,
        description = "Prints documents as PDF.",
        synopsisSubcommandLabel = "DOCUMENT")
final class PrintCommand implements Runnable {
    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    static CommandLine commandLine(Console console, Clock clock, String... words) {
        CommandLine print = new CommandLine(new PrintCommand());
        new Commands()
                .with("sheet", () -> new PrintSheetCommand(console, clock))
                .with("cards", () -> new PrintCardsCommand(console, clock))
                .with("labels", () -> new PrintLabelsCommand(console, clock))
                .with("reprint", () -> new PrintReprintCommand(console, clock))
                .with("ledger", () -> new PrintedCommand(console, clock))
                .with("proof", () -> new PrintProofCommand(console, clock))
                .with("calibration", () -> new PrintCalibrationCommand(console, clock))
                .with("calibrate", () -> new PrintCalibrateCommand(console, clock))
                .with("comparison", () -> new PrintComparisonCommand(console, clock))
                .with("availability", () -> new PrintAvailabilityCommand(console, clock))
                .with("bulletin", () -> new PrintBulletinCommand(console, clock))
                .with("list", () -> new PrintListCommand(console, clock))
                .with("sign", () -> new PrintSignCommand(console, clock))
                .with("contact-sheet", () -> new PrintContactSheetCommand(console, clock))
                .addTo(print, words);
        return print;
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "which document? One of those below.");
    }
}
