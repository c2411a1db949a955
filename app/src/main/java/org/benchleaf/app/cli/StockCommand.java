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

    static CommandLine commandLine(Console console, Clock clock, String... words) {
        CommandLine stock = new CommandLine(new StockCommand());
        new Commands()
                .with("receive", () -> new StockReceiveCommand(console, clock))
                .with("count", () -> new StockCountCommand(console, clock))
                .with("hold", () -> new StockHoldCommand(console, clock))
                .with("promise", () -> new StockPromiseCommand(console, clock))
                .with("release", () -> new StockReleaseCommand(console, clock))
                .with("ship", () -> new StockShipCommand(console, clock))
                .with("lose", () -> new StockLoseCommand(console, clock))
                .with("move", () -> new StockMoveCommand(console, clock))
                .with("ready", () -> new StockReadyCommand(console, clock))
                .with("see", () -> new StockSeeCommand(console, clock))
                .with("history", () -> new StockHistoryCommand(console, clock))
                .with("availability", () -> new StockAvailabilityCommand(console, clock))
                .addTo(stock, words);
        return stock;
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "which entry? One of those below.");
    }
}
