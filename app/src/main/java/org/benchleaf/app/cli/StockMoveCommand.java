package org.benchleaf.app.cli;

import java.time.Clock;
import java.util.Optional;
import org.benchleaf.catalog.StockLedger;
import org.benchleaf.catalog.ledger.StockEvent;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "move",
        mixinStandardHelpOptions = true,
        description =
                "So many went over to another lot of the plant (NUMBER and --to), or the whole lot to another place (--place).")
final class StockMoveCommand extends EntryCommand {
    @Parameters(index = "0", paramLabel = "LOT", description = "the lot's number")
    @SuppressWarnings("NullAway.Init")
    private String lot;

    @Parameters(index = "1", arity = "0..1", paramLabel = "NUMBER", description = "plants, with --to")
    private Optional<Integer> number = Optional.empty();

    @ArgGroup(multiplicity = "1")
    @SuppressWarnings("NullAway.Init")
    private Target target;

    static final class Target {
        @Option(names = "--to", paramLabel = "LOT", description = "the other lot")
        private Optional<String> lot = Optional.empty();

        @Option(names = "--place", paramLabel = "PLACE", description = "the other place, such as C1-3")
        private Optional<String> place = Optional.empty();
    }

    StockMoveCommand(Console console, Clock clock) {
        super(console, clock);
    }

    @Override
    Said said(StockLedger ledger) {
        StockEvent event = target.lot
                .<StockEvent>map(to -> new StockEvent.Moved(number.orElse(0), to))
                .orElseGet(() -> new StockEvent.Placed(target.place.orElse("").strip()));
        return new Said(lot, event);
    }
}
