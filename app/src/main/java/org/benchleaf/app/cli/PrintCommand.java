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

    static CommandLine commandLine(Console console, Clock clock) {
        CommandLine print = new CommandLine(new PrintCommand());
        print.addSubcommand(new PrintSheetCommand(console, clock));
        print.addSubcommand(new PrintCardsCommand(console, clock));
        print.addSubcommand(new PrintLabelsCommand(console, clock));
        print.addSubcommand(new PrintComparisonCommand(console, clock));
        print.addSubcommand(new PrintAvailabilityCommand(console, clock));
        print.addSubcommand(new PrintBulletinCommand(console, clock));
        print.addSubcommand(new PrintListCommand(console, clock));
        print.addSubcommand(new PrintSignCommand(console, clock));
        return print;
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "which document? One of those below.");
    }
}
