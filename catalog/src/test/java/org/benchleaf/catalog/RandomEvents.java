package org.benchleaf.catalog;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.benchleaf.catalog.ledger.LedgerEntry;
import org.benchleaf.catalog.ledger.StockEvent;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.stock.Condition;

/// What one person does to a few lots in a busy week, at random: every kind of entry, some of them impossible.
final class RandomEvents {
    static final int LOTS = 6;

    private record Held(String lot, String key) {}

    private final Random random;
    private final List<Held> holds = new ArrayList<>();

    RandomEvents(Random random) {
        this.random = random;
    }

    static List<String> lots() {
        return IntStream.range(0, LOTS).mapToObj(lot -> "T000" + lot).toList();
    }

    LedgerEntry next(String key) {
        String lot = "T000" + random.nextInt(LOTS);
        int some = 1 + random.nextInt(9);
        if (!holds.isEmpty() && random.nextInt(3) == 0) {
            Held hold = holds.remove(random.nextInt(holds.size()));
            StockEvent event = random.nextBoolean()
                    ? new StockEvent.Released(1, hold.key())
                    : new StockEvent.Shipped(1, Optional.of(hold.key()));
            return LedgerEntry.of(hold.lot(), event, "writer", "", key);
        }
        StockEvent event = switch (random.nextInt(12)) {
            case 0, 1, 2 -> new StockEvent.Received(some);
            case 3, 4, 5 -> new StockEvent.Shipped(some);
            case 6, 7 -> new StockEvent.Held(some, Optional.empty());
            case 8 -> new StockEvent.Lost(1);
            case 9 -> new StockEvent.Moved(some, "T000" + random.nextInt(LOTS));
            case 10 -> new StockEvent.Counted(random.nextInt(60));
            default ->
                random.nextBoolean()
                        ? new StockEvent.Ready(Optional.of(new YearWeek(2027, 1 + random.nextInt(50))))
                        : new StockEvent.Seen(Set.of(Condition.FULL), LocalDate.of(2026, 11, 1 + random.nextInt(25)));
        };
        return LedgerEntry.of(lot, event, "writer", "counted again", key);
    }

    void applied(LedgerEntry entry) {
        if (entry.event() instanceof StockEvent.Held) {
            holds.add(new Held(entry.lot(), entry.key()));
        }
    }
}
