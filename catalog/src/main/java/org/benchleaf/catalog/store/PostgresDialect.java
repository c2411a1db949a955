package org.benchleaf.catalog.store;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import org.benchleaf.catalog.CatalogLocation;
import org.benchleaf.catalog.CatalogUnusable;
import org.benchleaf.shared.Problem;
import org.postgresql.Driver;
import org.postgresql.PGConnection;

/// A catalog in a schema of a PostgreSQL server.
///
/// One advisory lock stands for the right to write, as SQLite has it in its file: states follow each other in one
/// order, so that a follower who has seen a revision has seen all before it.
///
/// @param server where it is
/// @param patience how long one program waits for another one that writes, in whole milliseconds
record PostgresDialect(CatalogLocation.OnServer server, Duration patience) implements Dialect {
    /// Longer than any import takes to write, from afar too.
    static final Duration PATIENCE = Duration.ofSeconds(60);

    private static final String CHANNEL = "benchleaf";
    private static final int SECONDS_TO_CONNECT = 10;
    /// Longer than any statement of ours takes.
    private static final int SECONDS_TO_ANSWER = 120;
    private static final int SECONDS_TO_PROVE_ALIVE = 2;

    /// States of a connection that is gone or going; source: PostgreSQL manual, appendix A, classes 08 and 57.
    private static final Set<String> GOING = Set.of("57P01", "57P02", "57P03");

    @Override
    public String shown() {
        return server.shown();
    }

    private Connection connect() throws SQLException {
        Properties properties = new Properties();
        server.user().ifPresent(user -> properties.setProperty("user", user));
        server.password().ifPresent(password -> properties.setProperty("password", password));
        properties.setProperty("ApplicationName", "Benchleaf");
        properties.setProperty("stringtype", "unspecified"); // a text may stand for a number, as it does in SQLite
        properties.setProperty("tcpKeepAlive", "true");
        properties.setProperty("connectTimeout", Integer.toString(SECONDS_TO_CONNECT));
        properties.setProperty("loginTimeout", Integer.toString(SECONDS_TO_CONNECT));
        properties.setProperty("socketTimeout", Integer.toString(SECONDS_TO_ANSWER));
        // a commit waits for the disk, and a program that froze while writing does not keep the others out
        properties.setProperty(
                "options",
                "-c synchronous_commit=on -c client_min_messages=warning -c lock_timeout=" + patience.toMillis()
                        + " -c idle_in_transaction_session_timeout=60000");
        Connection connection = new Driver().connect(server.url(), properties);
        if (connection == null) {
            throw new SQLException("not an address of PostgreSQL", "08001");
        }
        return connection;
    }

    @Override
    public Connection connectReader() throws SQLException {
        Connection connection = connect();
        connection.setTransactionIsolation(Connection.TRANSACTION_REPEATABLE_READ);
        connection.setReadOnly(true);
        return connection;
    }

    @Override
    public Connection connectWriter() throws SQLException {
        return connect();
    }

    @Override
    public void beginWriting(Connection connection) throws SQLException {
        run(connection, "SELECT pg_advisory_xact_lock(hashtextextended('benchleaf ' || current_schema(), 0))");
    }

    @Override
    public void beforeCommit(Connection connection) throws SQLException {
        run(connection, "SELECT pg_notify('" + CHANNEL + "', current_schema())");
    }

    private static void run(Connection connection, String sql) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    @Override
    public void copy(Connection connection, Path file) {
        throw new CatalogUnusable(Problem.of("backup.server", shown()));
    }

    @Override
    public boolean isAlive(Connection connection) throws SQLException {
        return connection.isValid(SECONDS_TO_PROVE_ALIVE);
    }

    @Override
    public boolean isLost(SQLException refusal) {
        String state = state(refusal);
        return state.startsWith("08") || GOING.contains(state);
    }

    private static String state(SQLException refusal) {
        String state = refusal.getSQLState();
        return state == null ? "" : state;
    }

    @Override
    public ChangeHint connectHint() throws SQLException {
        Connection connection = connect();
        try {
            run(connection, "LISTEN " + CHANNEL);
            PGConnection notified = connection.unwrap(PGConnection.class);
            return new ChangeHint() {
                @Override
                public void await(Duration longest) throws SQLException {
                    notified.getNotifications((int) longest.toMillis());
                }

                @Override
                public void close() throws SQLException {
                    connection.close();
                }
            };
        } catch (SQLException refused) {
            connection.close();
            throw refused;
        }
    }

    /// Whole numbers are long ones, and texts sort by their bytes, as in SQLite.
    @Override
    public String words(String migration) {
        return migration
                .replace("${strict}", "")
                .replace("${clustered}", "")
                .replaceAll("\\bINTEGER\\b", "BIGINT")
                .replaceAll("\\bTEXT\\b", "TEXT COLLATE \"C\"");
    }

    @Override
    public String joined(String text, char between) {
        return "string_agg(" + text + ", chr(" + (int) between + "))";
    }

    @Override
    public Problem explain(SQLException refusal) {
        String state = state(refusal);
        String key = switch (state) {
            case "08001", "08004", "57P03" -> "catalog.unreachable";
            case "28000", "28P01" -> "catalog.login";
            case "3D000", "3F000" -> "catalog.no.database";
            case "42501" -> "catalog.rights";
            case "53100" -> "catalog.server.full";
            case "53300" -> "catalog.server.crowded";
            case "55P03" -> "catalog.locked";
            default -> isLost(refusal) ? "catalog.lost" : "catalog.server.failed";
        };
        return Problem.of(key, shown()).with("cause", String.valueOf(refusal.getMessage()));
    }

    /// A server looks after its pages itself.
    @Override
    public List<String> damage(Connection connection) {
        return List.of();
    }
}
