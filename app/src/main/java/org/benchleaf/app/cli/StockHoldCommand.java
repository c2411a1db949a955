package org.benchleaf.app.cli;

import java.time.Clock;
import java.util.Optional;
import org.benchleaf.catalog.StockLedger;
import org.benchleaf.catalog.ledger.StockEvent;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "hold",
        mixinStandardHelpOptions = true,
        description = "Sets so many aside for a customer: still there, no longer free.")
final class StockHoldCommand extends EntryCommand {
    @Parameters(index = "0", paramLabel = "LOT", description = "the lot's number")
    @SuppressWarnings("NullAway.Init")
    private String lot;

    @Parameters(index = "1", paramLabel = "NUMBER", description = "plants, 1 or more")
    private int number;

    @Option(
            names = "--until",
            paramLabel = "TIME",
            description =
                    "free again after it without another word: 2026-12-01 or 2026-12-01T17:00 (default: until released)")
    private Optional<String> until = Optional.empty();

    StockHoldCommand(Console console, Clock clock) {
        super(console, clock);
    }

    @Override
    Said said(StockLedger ledger) {
        return new Said(lot, new StockEvent.Held(number, until.map(text -> Moments.end(text, clock().getZone()))));
    }
}
