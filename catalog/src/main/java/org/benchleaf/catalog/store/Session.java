package org.benchleaf.catalog.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/// A connection, and the few ways of asking that the store needs; lent to one transaction at a time.
///
/// The bare driver and no library above it: one that maps rows would lengthen every command's start,
/// measured on two cores. Statements are kept ready: a database takes longer to understand one than to answer it
/// for a few plants.
final class Session {
    /// Makes a value of one row.
    interface RowReader<T> {
        T read(ResultSet row) throws SQLException;
    }

    /// Works with a statement.
    interface Use<T> {
        T with(PreparedStatement statement) throws SQLException;
    }

    /// Statements kept ready: the store has about a hundred, an answer uses twenty.
    private static final int MOST = 64;

    private final Connection connection;
    /// Those not in use, the longest unused first.
    private final Map<String, PreparedStatement> ready = new LinkedHashMap<>();

    Session(Connection connection) {
        this.connection = connection;
    }

    Connection connection() {
        return connection;
    }

    /// Works with a statement that is made ready or was kept ready. The same text may be in use twice, one inside
    /// the other: each has a statement of its own.
    <T> T prepared(String sql, Use<T> use) throws SQLException {
        PreparedStatement kept = ready.remove(sql);
        PreparedStatement statement = kept == null ? connection.prepareStatement(sql) : kept;
        boolean whole = false;
        try {
            T result = use.with(statement);
            whole = true;
            return result;
        } finally {
            if (whole) {
                keep(sql, statement);
            } else {
                statement.close();
            }
        }
    }

    private void keep(String sql, PreparedStatement statement) throws SQLException {
        PreparedStatement same = ready.put(sql, statement);
        if (same != null) {
            same.close();
        } else if (ready.size() > MOST) {
            Iterator<PreparedStatement> longestUnused = ready.values().iterator();
            longestUnused.next().close();
            longestUnused.remove();
        }
    }

    /// Runs a statement.
    ///
    /// @return how many rows it changed
    int execute(String sql, @Nullable Object... values) throws SQLException {
        return prepared(sql, statement -> {
            bind(statement, values);
            return statement.executeUpdate();
        });
    }

    /// Hands over each row of an answer.
    void each(String sql, Rows.Taker taker, @Nullable Object... values) throws SQLException {
        prepared(sql, statement -> {
            bind(statement, values);
            return handOver(statement, taker);
        });
    }

    /// @return how many rows there were
    static int handOver(PreparedStatement statement, Rows.Taker taker) throws SQLException {
        int count = 0;
        try (ResultSet rows = statement.executeQuery()) {
            while (rows.next()) {
                taker.take(rows);
                count++;
            }
        }
        return count;
    }

    <T> List<T> list(String sql, RowReader<T> reader, @Nullable Object... values) throws SQLException {
        List<T> all = new ArrayList<>();
        each(sql, row -> all.add(reader.read(row)), values);
        return all;
    }

    <T> Optional<T> first(String sql, RowReader<T> reader, @Nullable Object... values) throws SQLException {
        return list(sql, reader, values).stream().findFirst();
    }

    /// The number that a query answers with.
    long number(String sql) throws SQLException {
        return first(sql, row -> row.getLong(1)).orElseThrow();
    }

    static void bind(PreparedStatement statement, @Nullable Object... values) throws SQLException {
        for (int place = 0; place < values.length; place++) {
            switch (values[place]) {
                case null -> statement.setNull(place + 1, Types.NULL);
                case Integer number -> statement.setInt(place + 1, number);
                case Long number -> statement.setLong(place + 1, number);
                case Object text -> statement.setString(place + 1, text.toString());
            }
        }
    }
}
