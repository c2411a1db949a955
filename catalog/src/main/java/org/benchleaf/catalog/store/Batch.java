package org.benchleaf.catalog.store;

import java.sql.PreparedStatement;
import java.sql.SQLException;
import org.jspecify.annotations.Nullable;

/// One statement for many rows, prepared once and sent in bundles; closing it sends the rest.
final class Batch implements AutoCloseable {
    private static final int BUNDLE = 2000;

    private final PreparedStatement statement;
    private int waiting;
    private boolean failed;

    Batch(Session session, String sql) throws SQLException {
        this.statement = session.connection().prepareStatement(sql);
    }

    void add(@Nullable Object... values) throws SQLException {
        Session.bind(statement, values);
        statement.addBatch();
        if (++waiting == BUNDLE) {
            send();
        }
    }

    private void send() throws SQLException {
        waiting = 0;
        failed = true;
        statement.executeBatch();
        failed = false;
    }

    @Override
    public void close() throws SQLException {
        try (statement) {
            if (waiting > 0 && !failed) {
                send();
            }
        }
    }
}
