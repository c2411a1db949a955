package org.benchleaf.catalog;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import org.junit.jupiter.api.Assumptions;

/// A PostgreSQL server of the tests' own, started when first asked for and stopped with them.
public final class TestPostgres {
    private TestPostgres() {}

    private static final class Server {
        private static final EmbeddedPostgres RUNNING = start();

        private static EmbeddedPostgres start() {
            try {
                return EmbeddedPostgres.builder()
                        .setServerConfig("max_connections", "200")
                        .start();
            } catch (IOException failed) {
                throw new UncheckedIOException(failed);
            }
        }
    }

    /// A new or known schema for a folder of a test.
    static CatalogLocation.OnServer schemaOf(Path folder) {
        Assumptions.assumeTrue(
                System.getProperty("os.name").equals("Linux")
                        && System.getProperty("os.arch").equals("amd64"),
                "the tests bring binaries of PostgreSQL for Linux on amd64 only");
        String schema =
                "t" + Integer.toHexString(folder.toAbsolutePath().toString().hashCode());
        String url = Server.RUNNING.getJdbcUrl("postgres", "postgres");
        try (Connection connection = DriverManager.getConnection(url);
                Statement statement = connection.createStatement()) {
            statement.execute("CREATE SCHEMA IF NOT EXISTS " + schema);
        } catch (SQLException refused) {
            throw new IllegalStateException(refused);
        }
        return new CatalogLocation.OnServer(
                url + (url.contains("?") ? "&" : "?") + "currentSchema=" + schema, Optional.empty(), Optional.empty());
    }

    /// Ends every connection of the program's, as a restarted network device would.
    static int cutConnections() throws SQLException {
        try (Connection connection = DriverManager.getConnection(Server.RUNNING.getJdbcUrl("postgres", "postgres"));
                Statement statement = connection.createStatement();
                var rows = statement.executeQuery("SELECT COUNT(pg_terminate_backend(pid)) FROM pg_stat_activity"
                        + " WHERE application_name = 'Benchleaf'")) {
            rows.next();
            return rows.getInt(1);
        }
    }
}
