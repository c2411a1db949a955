package org.benchleaf.app.cli;

import java.time.Clock;
import java.util.Optional;
import org.benchleaf.app.Refusal;
import org.benchleaf.catalog.StockLedger;
import org.benchleaf.catalog.ledger.Hold;
import org.benchleaf.catalog.ledger.StockEvent;
import org.benchleaf.shared.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

@Command(name = "release", mixinStandardHelpOptions = true, description = "So many of a hold are free again.")
final class StockReleaseCommand extends EntryCommand {
    @Parameters(
            index = "0",
            paramLabel = "HOLD",
            description = "what the hold is called: the key of the entry that made it")
    @SuppressWarnings("NullAway.Init")
    private String hold;

    @Parameters(index = "1", arity = "0..1", paramLabel = "NUMBER", description = "plants (default: all that are left)")
    private Optional<Integer> number = Optional.empty();

    StockReleaseCommand(Console console, Clock clock) {
        super(console, clock);
    }

    @Override
    Said said(StockLedger ledger) {
        Hold held = ledger.hold(hold).orElseThrow(() -> new Refusal(Problem.of("ledger.hold.unknown", hold)));
        return new Said(held.lot(), new StockEvent.Released(number.orElse(held.quantity()), hold));
    }
}
