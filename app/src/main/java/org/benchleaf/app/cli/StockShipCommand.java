package org.benchleaf.app.cli;

import java.time.Clock;
import java.util.Optional;
import org.benchleaf.catalog.StockLedger;
import org.benchleaf.catalog.ledger.StockEvent;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "ship",
        mixinStandardHelpOptions = true,
        description = "So many left for a customer: free ones, or those of a hold.")
final class StockShipCommand extends EntryCommand {
    @Parameters(index = "0", paramLabel = "LOT", description = "the lot's number")
    @SuppressWarnings("NullAway.Init")
    private String lot;

    @Parameters(index = "1", paramLabel = "NUMBER", description = "plants, 1 or more")
    private int number;

    @Option(names = "--hold", paramLabel = "KEY", description = "the hold that they were set aside by")
    private Optional<String> hold = Optional.empty();

    StockShipCommand(Console console, Clock clock) {
        super(console, clock);
    }

    @Override
    Said said(StockLedger ledger) {
        return new Said(lot, new StockEvent.Shipped(number, hold));
    }
}
