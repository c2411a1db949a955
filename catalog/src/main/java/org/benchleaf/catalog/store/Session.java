package org.benchleaf.catalog.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/// The connection of one transaction, and the few ways of asking that the store needs.
///
/// The bare driver and no library above it: one that maps rows would lengthen every command's start,
/// measured on two cores.
///
/// @param connection inside a transaction
record Session(Connection connection) {
    /// Makes a value of one row.
    interface RowReader<T> {
        T read(ResultSet row) throws SQLException;
    }

    /// Runs a statement.
    ///
    /// @return how many rows it changed
    int execute(String sql, @Nullable Object... values) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            bind(statement, values);
            return statement.executeUpdate();
        }
    }

    /// Hands over each row of an answer.
    void each(String sql, Rows.Taker taker, @Nullable Object... values) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            bind(statement, values);
            try (ResultSet rows = statement.executeQuery()) {
                while (rows.next()) {
                    taker.take(rows);
                }
            }
        }
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
