package org.benchleaf.catalog.store;

import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Types;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/// One statement for many rows, prepared once and sent in bundles; closing it sends the rest.
final class Batch implements AutoCloseable {
    private static final int BUNDLE = 2000;

    private final PreparedStatement statement;
    private int waiting;
    private boolean failed;

    Batch(Handle handle, String sql) throws SQLException {
        this.statement = handle.getConnection().prepareStatement(sql);
    }

    void add(@Nullable Object... values) throws SQLException {
        for (int place = 0; place < values.length; place++) {
            switch (values[place]) {
                case null -> statement.setNull(place + 1, Types.VARCHAR);
                case Integer number -> statement.setInt(place + 1, number);
                case Long number -> statement.setLong(place + 1, number);
                case Object text -> statement.setString(place + 1, text.toString());
            }
        }
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
