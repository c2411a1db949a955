package org.benchleaf.app.cli;

import java.time.Clock;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

@Command(
        name = "stock",
        mixinStandardHelpOptions = true,
        description = "Writes into the stock ledger, and tells what can be promised.",
        synopsisSubcommandLabel = "ENTRY")
final class StockCommand implements Runnable {
    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    static CommandLine commandLine(Console console, Clock clock) {
        CommandLine stock = new CommandLine(new StockCommand());
        stock.addSubcommand(new StockReceiveCommand(console, clock));
        stock.addSubcommand(new StockCountCommand(console, clock));
        stock.addSubcommand(new StockHoldCommand(console, clock));
        stock.addSubcommand(new StockReleaseCommand(console, clock));
        stock.addSubcommand(new StockShipCommand(console, clock));
        stock.addSubcommand(new StockLoseCommand(console, clock));
        stock.addSubcommand(new StockMoveCommand(console, clock));
        stock.addSubcommand(new StockReadyCommand(console, clock));
        stock.addSubcommand(new StockSeeCommand(console, clock));
        stock.addSubcommand(new StockHistoryCommand(console, clock));
        stock.addSubcommand(new StockAvailabilityCommand(console, clock));
        return stock;
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "which entry? One of those below.");
    }
}
