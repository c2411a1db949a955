package org.benchleaf.bench.engines;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;

/// One other engine with the wide table in it.
final class Engine implements AutoCloseable {
    private final Connection connection;

    private Engine(Connection connection) {
        this.connection = connection;
    }

    /// @param url where; the driver must be on the class path
    static Engine open(String url) throws SQLException {
        Connection connection = DriverManager.getConnection(url);
        try (Statement statement = connection.createStatement()) {
            statement.execute("create table items (" + WideRows.COLUMNS + ")");
        }
        connection.setAutoCommit(false);
        return new Engine(connection);
    }

    void insert(Stream<String> lines) throws SQLException {
        String holes = String.join(",", Collections.nCopies(WideRows.COLUMNS.split(",").length, "?"));
        try (PreparedStatement insert = connection.prepareStatement("insert into items values (" + holes + ")")) {
            for (String line : (Iterable<String>) lines::iterator) {
                List<String> cells = WideRows.cells(line);
                for (int at = 0; at < cells.size(); at++) {
                    boolean text = at == 1 || at == 14;
                    if (cells.get(at).isEmpty()) {
                        insert.setObject(at + 1, null);
                    } else if (text) {
                        insert.setString(at + 1, cells.get(at));
                    } else {
                        insert.setLong(at + 1, Long.parseLong(cells.get(at)));
                    }
                }
                insert.addBatch();
            }
            insert.executeBatch();
        }
        connection.commit();
    }

    /// Reads a file of lines as [WideRows] writes them; only where the engine can.
    void copy(String file) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute("copy items from '" + file + "' (header false, nullstr '')");
        }
        connection.commit();
    }

    void index(String... columns) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            for (String column : columns) {
                statement.execute("create index items_" + column + " on items (" + column + ")");
            }
            statement.execute("analyze");
        }
        connection.commit();
    }

    /// Asks all three statements and reads every row.
    ///
    /// @return how many rows came
    int ask(NeedSql need) throws SQLException {
        int rows = 0;
        try (Statement statement = connection.createStatement()) {
            for (String sql : List.of(need.best(), need.counts(), need.kinds())) {
                try (ResultSet found = statement.executeQuery(sql)) {
                    while (found.next()) {
                        found.getLong(1);
                        rows++;
                    }
                }
            }
        }
        return rows;
    }

    @Override
    public void close() throws SQLException {
        connection.close();
    }
}
