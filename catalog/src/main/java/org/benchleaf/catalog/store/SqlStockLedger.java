package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.time.Clock;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.CatalogView.Change;
import org.benchleaf.catalog.LedgerResult;
import org.benchleaf.catalog.StockLedger;
import org.benchleaf.catalog.model.LedgerKind;
import org.benchleaf.shared.Problem;

/// The stock ledger over the database: the entry, the lot's count and the change feed in one transaction.
final class SqlStockLedger implements StockLedger {
    private final Database database;
    private final Clock clock;

    SqlStockLedger(Database database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    private record Entry(String lot, String kind, int stated) {}

    private record Lot(int plant, int onHand) {}

    @Override
    public LedgerResult record(
            String lot, LedgerKind kind, int quantity, String who, String why, String idempotencyKey) {
        if (idempotencyKey.isBlank()) {
            throw new IllegalArgumentException("a ledger entry needs an idempotency key; lot " + lot);
        }
        if (!kind.accepts(quantity)) {
            return new LedgerResult.Refused(
                    Problem.of("ledger.quantity", Integer.toString(quantity)).with("kind", kind.term()));
        }
        return database.write(session -> {
            Optional<Entry> earlier = earlier(session, idempotencyKey);
            if (earlier.isPresent()) {
                return repeated(session, earlier.get(), new Entry(lot, kind.term(), quantity), idempotencyKey);
            }
            Optional<Lot> found = lot(session, lot);
            if (found.isEmpty()) {
                return new LedgerResult.Refused(Problem.of("ledger.lot.unknown", lot));
            }
            int change = kind.change(quantity, found.get().onHand());
            if (!changeCount(session, lot, change)) {
                return new LedgerResult.Refused(Problem.of("ledger.too.few", Integer.toString(quantity))
                        .with("lot", lot)
                        .with("kind", kind.term())
                        .with("count", Integer.toString(found.get().onHand())));
            }
            try (LedgerEntries entries = new LedgerEntries(session, clock.instant())) {
                entries.add(lot, kind, change, quantity, who, why, idempotencyKey);
            }
            if (change != 0) {
                announce(session, found.get().plant());
            }
            return new LedgerResult.Applied(found.get().onHand() + change);
        });
    }

    private static LedgerResult repeated(Session session, Entry earlier, Entry now, String key) throws SQLException {
        if (!earlier.equals(now)) {
            return new LedgerResult.Refused(
                    Problem.of("ledger.key.reused", key).with("lot", now.lot()).with("earlier", earlier.lot()));
        }
        int count = lot(session, earlier.lot()).map(Lot::onHand).orElse(0);
        return new LedgerResult.AlreadyApplied(count);
    }

    private static Optional<Entry> earlier(Session session, String key) throws SQLException {
        return session.first(
                "SELECT lot, kind, stated FROM ledger WHERE idempotency_key = ?",
                row -> new Entry(row.getString(1), row.getString(2), row.getInt(3)),
                key);
    }

    private static Optional<Lot> lot(Session session, String lot) throws SQLException {
        return session.first(
                "SELECT plant, on_hand FROM lot WHERE lot = ? AND withdrawn = 0",
                row -> new Lot(row.getInt(1), row.getInt(2)),
                lot);
    }

    /// The guard is in the statement itself: whatever was read before, a count never falls below zero.
    private static boolean changeCount(Session session, String lot, int change) throws SQLException {
        return session.execute(
                        "UPDATE lot SET on_hand = on_hand + ? WHERE lot = ? AND on_hand + ? BETWEEN 0 AND ?",
                        change,
                        lot,
                        change,
                        LedgerKind.MOST)
                == 1;
    }

    private void announce(Session session, int plant) throws SQLException {
        CatalogRevision next = new CatalogRevision(State.revision(session).number() + 1);
        ChangeFeed.record(session, Set.of(plant), Change.Kind.STOCK, next);
        State.advance(session, next, clock.instant());
    }
}
