package org.benchleaf.app.cli;

import java.time.Clock;
import java.util.Optional;
import org.benchleaf.catalog.StockLedger;
import org.benchleaf.catalog.ledger.StockEvent;
import org.benchleaf.shared.measure.YearWeek;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

@Command(name = "ready", mixinStandardHelpOptions = true, description = "The lot can be taken from another week on.")
final class StockReadyCommand extends EntryCommand {
    @Parameters(index = "0", paramLabel = "LOT", description = "the lot's number")
    @SuppressWarnings("NullAway.Init")
    private String lot;

    @Parameters(index = "1", paramLabel = "WEEK", description = "2027-W14, a day in it such as 2027-04-05, or now")
    @SuppressWarnings("NullAway.Init")
    private String week;

    StockReadyCommand(Console console, Clock clock) {
        super(console, clock);
    }

    @Override
    Said said(StockLedger ledger) {
        return new Said(lot, new StockEvent.Ready(week(week)));
    }

    /// @return empty for `now`
    static Optional<YearWeek> week(String text) {
        return text.strip().equalsIgnoreCase("now") ? Optional.empty() : Optional.of(Given.ok(YearWeek.read(text)));
    }
}
