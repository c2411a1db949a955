package org.benchleaf.app.cli;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import org.benchleaf.catalog.StockLedger;
import org.benchleaf.catalog.ledger.StockEvent;
import org.benchleaf.shared.Term;
import org.benchleaf.shared.stock.Condition;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "see", mixinStandardHelpOptions = true, description = "The lot looked so.")
final class StockSeeCommand extends EntryCommand {
    @Parameters(index = "0", paramLabel = "LOT", description = "the lot's number")
    @SuppressWarnings("NullAway.Init")
    private String lot;

    @Parameters(
            index = "1",
            paramLabel = "CONDITION",
            description = "what was seen, parted by ; such as 'in bloom; full'. Known are: "
                    + "flower buds set, bud set good, in bud, in bloom, still some flower, fall color starting, "
                    + "full fall color, winter hue, winter stems showing, foliage finished, pluming up, berries on, "
                    + "flushing, trimmed, cut back, full, heavy, good canes, good side growth, consistent crop, tied up, "
                    + "staged, next crop in spring")
    @SuppressWarnings("NullAway.Init")
    private String conditions;

    @Option(names = "--on", paramLabel = "DAY", description = "when, such as 2026-11-24 (default: today)")
    private Optional<String> day = Optional.empty();

    StockSeeCommand(Console console, Clock clock) {
        super(console, clock);
    }

    @Override
    Said said(StockLedger ledger) {
        LocalDate seen = day.map(Given::day).orElseGet(() -> LocalDate.now(clock()));
        return new Said(lot, new StockEvent.Seen(Readings.read(Term.readSet(Condition.class, conditions)), seen));
    }
}
