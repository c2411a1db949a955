package org.benchleaf.app.cli;

import java.time.Clock;
import org.benchleaf.catalog.StockLedger;
import org.benchleaf.catalog.ledger.StockEvent;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

@Command(name = "lose", mixinStandardHelpOptions = true, description = "So many died, were broken or stolen.")
final class StockLoseCommand extends EntryCommand {
    @Parameters(index = "0", paramLabel = "LOT", description = "the lot's number")
    @SuppressWarnings("NullAway.Init")
    private String lot;

    @Parameters(index = "1", paramLabel = "NUMBER", description = "plants, 1 or more")
    private int number;

    StockLoseCommand(Console console, Clock clock) {
        super(console, clock);
    }

    @Override
    Said said(StockLedger ledger) {
        return new Said(lot, new StockEvent.Lost(number));
    }
}
