package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.time.Instant;
import org.benchleaf.catalog.model.LedgerKind;

/// Appends entries to the ledger; the lot's count is changed beside it, in the same transaction.
final class LedgerEntries implements AutoCloseable {
    private static final String ENTRY = "INSERT INTO ledger"
            + " (entry, lot, kind, quantity, stated, happened_at, who, why, idempotency_key)"
            + " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)";

    private final Batch batch;
    private final Instant now;
    private long next;

    LedgerEntries(Session session, Instant now) throws SQLException {
        this.now = now;
        this.next = session.number("SELECT COALESCE(MAX(entry), 0) + 1 FROM ledger");
        this.batch = new Batch(session, ENTRY);
    }

    /// @param change what it adds to the count
    /// @param stated the number as it was given
    void add(String lot, LedgerKind kind, int change, int stated, String who, String why, String idempotencyKey)
            throws SQLException {
        batch.add(next++, lot, kind.term(), change, stated, now.toString(), who, why, idempotencyKey);
    }

    @Override
    public void close() throws SQLException {
        batch.close();
    }
}
