package org.benchleaf.catalog.store;

import java.sql.SQLException;
import org.jspecify.annotations.Nullable;

/// Writes what an import changes beside it, in the same transaction; the logs of the newest imports are kept.
final class UndoLog implements ChangeLog, AutoCloseable {
    /// Imports that can be taken back, one after the other.
    static final int KEPT = 10;

    private static final String ROW = "INSERT INTO import_change (import, seq, thing, plant, id, before, after)"
            + " VALUES (?, ?, ?, ?, ?, ?, ?)";

    private final Session session;
    private final long number;
    private final Batch batch;
    private long seq;

    /// @param number of the import
    UndoLog(Session session, long number) throws SQLException {
        this.session = session;
        this.number = number;
        this.batch = new Batch(session, ROW);
    }

    @Override
    public void add(RowChange change) throws SQLException {
        batch.add(
                number,
                seq++,
                change.thing().stored(),
                change.plant(),
                RowChange.write(java.util.List.copyOf(change.id())),
                image(change.before()),
                image(change.after()));
    }

    private static @Nullable String image(java.util.Optional<java.util.List<@Nullable String>> columns) {
        return columns.map(RowChange::write).orElse(null);
    }

    boolean isEmpty() {
        return seq == 0;
    }

    @Override
    public void close() throws SQLException {
        batch.close();
        session.execute("DELETE FROM import_change WHERE import <= ?", number - KEPT);
    }
}
