package org.benchleaf.app.cli;

import java.time.Clock;
import org.benchleaf.catalog.StockLedger;
import org.benchleaf.catalog.ledger.StockEvent;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

@Command(
        name = "count",
        mixinStandardHelpOptions = true,
        description = "So many were counted: the count becomes this number. One that differs needs --why.")
final class StockCountCommand extends EntryCommand {
    @Parameters(index = "0", paramLabel = "LOT", description = "the lot's number")
    @SuppressWarnings("NullAway.Init")
    private String lot;

    @Parameters(index = "1", paramLabel = "NUMBER", description = "plants found, 0 or more")
    private int number;

    StockCountCommand(Console console, Clock clock) {
        super(console, clock);
    }

    @Override
    Said said(StockLedger ledger) {
        return new Said(lot, new StockEvent.Counted(number));
    }
}
