package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.time.Instant;

/// Appends entries to the ledger; the lot's count is changed beside it, in the same transaction.
final class LedgerEntries implements AutoCloseable {
    private static final String ENTRY =
            "INSERT INTO ledger (entry, lot, kind, quantity, stated, held, hold, held_until,"
                    + " other_lot, detail, happened_at, entered_at, who, why, idempotency_key)"
                    + " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)";

    private final Batch batch;
    private final Instant now;
    private long next;

    LedgerEntries(Session session, Instant now) throws SQLException {
        this.now = now;
        this.next = session.number("SELECT COALESCE(MAX(entry), 0) + 1 FROM ledger");
        this.batch = new Batch(session, ENTRY);
    }

    void add(LedgerRow row) throws SQLException {
        LedgerRow.Said said = row.said();
        batch.add(
                next++,
                said.lot(),
                said.kind().term(),
                row.change(),
                said.stated(),
                row.held(),
                said.hold().orElse(null),
                said.until().orElse(null),
                said.otherLot().orElse(null),
                said.detail(),
                row.happenedAt().toString(),
                now.toString(),
                row.who(),
                row.why(),
                row.key().orElse(null));
    }

    @Override
    public void close() throws SQLException {
        batch.close();
    }
}
