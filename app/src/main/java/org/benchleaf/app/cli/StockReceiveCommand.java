package org.benchleaf.app.cli;

import java.time.Clock;
import java.util.Locale;
import java.util.Optional;
import org.benchleaf.catalog.StockLedger;
import org.benchleaf.catalog.ledger.NewLot;
import org.benchleaf.catalog.ledger.StockEvent;
import org.benchleaf.shared.code.ItemKey;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "receive",
        mixinStandardHelpOptions = true,
        description = "So many came in. With --item the lot is new and begins with them.")
final class StockReceiveCommand extends EntryCommand {
    @Parameters(index = "0", paramLabel = "LOT", description = "the lot's number")
    @SuppressWarnings("NullAway.Init")
    private String lot;

    @Parameters(index = "1", paramLabel = "NUMBER", description = "plants, 1 or more")
    private int number;

    @Option(names = "--item", paramLabel = "KEY", description = "the item that a new lot is of, such as K7QMN2X-3")
    private Optional<String> item = Optional.empty();

    @Option(names = "--place", paramLabel = "PLACE", defaultValue = "", description = "where a new lot stands")
    @SuppressWarnings("NullAway.Init")
    private String place;

    @Option(names = "--ready", paramLabel = "WEEK", description = "from when a new lot can be taken, such as 2027-W14")
    private Optional<String> ready = Optional.empty();

    StockReceiveCommand(Console console, Clock clock) {
        super(console, clock);
    }

    @Override
    Said said(StockLedger ledger) {
        Optional<NewLot> begun = item.map(key -> new NewLot(
                Given.ok(ItemKey.read(key.toUpperCase(Locale.ROOT))),
                place.strip(),
                ready.flatMap(StockReadyCommand::week)));
        return new Said(lot, new StockEvent.Received(number, begun));
    }
}
