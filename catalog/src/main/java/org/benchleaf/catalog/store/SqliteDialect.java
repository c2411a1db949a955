package org.benchleaf.catalog.store;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.benchleaf.shared.Problem;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;
import org.sqlite.SQLiteOpenMode;

/// A catalog in one file of SQLite.
///
/// The write-ahead log lets readers go on while one writes. `synchronous=FULL` makes a commit wait for the disk:
/// with NORMAL a power cut takes back commits that were already acknowledged.
///
/// @param file the database
/// @param create whether it may be made
/// @param patience how long one program waits for another one that writes, in whole milliseconds
record SqliteDialect(Path file, boolean create, Duration patience) implements Dialect {
    /// Longer than any import takes to write.
    static final Duration PATIENCE = Duration.ofSeconds(10);

    private static final int READER_CACHE_KIB = 16 * 1024;
    private static final int WRITER_CACHE_KIB = 64 * 1024;
    /// To which the log is cut back after a large import.
    private static final int LOG_BYTES = 64 * 1024 * 1024;

    @Override
    public String shown() {
        return file.toString();
    }

    @Override
    public Connection connectReader() throws SQLException {
        return prepared(config(READER_CACHE_KIB).createConnection(url()), "PRAGMA query_only = ON");
    }

    @Override
    public Connection connectWriter() throws SQLException {
        SQLiteConfig config = config(WRITER_CACHE_KIB);
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
        return prepared(config.createConnection(url()), "PRAGMA journal_size_limit = " + LOG_BYTES);
    }

    /// Its transactions begin by taking the right to write: see the transaction mode above.
    @Override
    public void beginWriting(Connection connection) {}

    /// Other programs look at the file.
    @Override
    public void beforeCommit(Connection connection) {}

    @Override
    public void copy(Connection connection, Path file) throws SQLException {
        try (Statement allow = connection.createStatement()) {
            allow.execute("PRAGMA query_only = OFF"); // writing another file counts as writing
        }
        try (PreparedStatement copy = connection.prepareStatement("VACUUM INTO ?")) {
            copy.setString(1, file.toString());
            copy.executeUpdate();
        }
    }

    @Override
    public boolean isAlive(Connection connection) {
        return true;
    }

    @Override
    public boolean isLost(SQLException refusal) {
        return false;
    }

    @Override
    public ChangeHint connectHint() {
        return new ChangeHint() {
            @Override
            public void await(Duration longest) throws InterruptedException {
                Thread.sleep(longest);
            }

            @Override
            public void close() {}
        };
    }

    private SQLiteConfig config(int cacheKib) {
        SQLiteConfig config = new SQLiteConfig();
        if (!create) {
            config.resetOpenMode(SQLiteOpenMode.CREATE);
        }
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.enforceForeignKeys(true);
        config.setBusyTimeout((int) patience.toMillis());
        config.setCacheSize(-cacheKib); // negative means KiB, not pages
        return config;
    }

    private String url() {
        return "jdbc:sqlite:" + file.toAbsolutePath();
    }

    private static Connection prepared(Connection connection, String pragma) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute(pragma);
            return connection;
        } catch (SQLException refused) {
            connection.close();
            throw refused;
        }
    }

    @Override
    public String words(String migration) {
        return migration.replace("${strict}", " STRICT").replace("${clustered}", " STRICT, WITHOUT ROWID");
    }

    @Override
    public String joined(String text, char between) {
        return "group_concat(" + text + ", char(" + (int) between + "))";
    }

    @Override
    public Problem explain(SQLException refusal) {
        int primaryCode = refusal instanceof SQLiteException sqlite
                ? sqlite.getResultCode().code & 0xff // the upper bits only tell kinds of one code apart
                : SQLiteErrorCode.SQLITE_ERROR.code;
        Path folder = file.toAbsolutePath().getParent();
        boolean sealed = folder != null && !Files.isWritable(folder) || Files.exists(file) && !Files.isWritable(file);
        String key = switch (primaryCode) {
            case 5, 6 -> "catalog.locked"; // BUSY, LOCKED
            case 8 -> "catalog.read.only"; // READONLY
            case 10, 14 -> sealed ? "catalog.read.only" : "catalog.failed"; // IOERR, CANTOPEN
            case 11 -> "catalog.damaged"; // CORRUPT
            case 13 -> "catalog.full"; // FULL
            case 26 -> "catalog.not.database"; // NOTADB
            default -> "catalog.failed";
        };
        return Problem.of(key, file.toString()).with("cause", String.valueOf(refusal.getMessage()));
    }

    @Override
    public List<String> damage(Connection connection) throws SQLException {
        List<String> found = new ArrayList<>();
        try (Statement statement = connection.createStatement()) {
            try (ResultSet rows = statement.executeQuery("PRAGMA integrity_check")) {
                while (rows.next()) {
                    String line = rows.getString(1);
                    if (!line.equals("ok")) {
                        found.add(line);
                    }
                }
            }
            try (ResultSet rows = statement.executeQuery("PRAGMA foreign_key_check")) {
                while (rows.next()) {
                    found.add("row " + rows.getString(2) + " of " + rows.getString(1) + " points at nothing in "
                            + rows.getString(3));
                }
            }
        }
        return found;
    }
}
