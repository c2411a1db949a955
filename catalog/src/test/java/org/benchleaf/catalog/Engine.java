package org.benchleaf.catalog;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;

/// The databases that every contract of the store is held against; real ones.
public enum Engine {
    SQLITE {
        @Override
        public CatalogLocation location(Path folder) {
            return new CatalogLocation.InFile(folder.resolve("catalog.db"));
        }

        @Override
        Connection connect(Path folder) throws SQLException {
            return DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("catalog.db"));
        }
    },
    /// Each folder has a schema of its own on one server.
    POSTGRESQL {
        @Override
        public CatalogLocation location(Path folder) {
            return TestPostgres.schemaOf(folder);
        }

        @Override
        Connection connect(Path folder) throws SQLException {
            return DriverManager.getConnection(TestPostgres.schemaOf(folder).url());
        }
    };

    public abstract CatalogLocation location(Path folder);

    /// As somebody would who knows the database and not this program.
    abstract Connection connect(Path folder) throws SQLException;

    public Catalog create(Path folder) {
        return create(folder, Clock.systemUTC());
    }

    public Catalog create(Path folder, Clock clock) {
        return Catalog.create(location(folder), clock);
    }

    public Catalog open(Path folder) {
        return Catalog.open(location(folder), Clock.systemUTC());
    }

    /// Runs a statement behind the catalog's back.
    public void sql(Path folder, String sql) throws SQLException {
        try (Connection connection = connect(folder);
                Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    /// A location as an argument of another program, and back.
    static String argument(CatalogLocation location) {
        return switch (location) {
            case CatalogLocation.InFile(Path file) -> file.toString();
            case CatalogLocation.OnServer server -> server.url();
        };
    }

    static CatalogLocation location(String argument) {
        return argument.startsWith(CatalogLocation.OnServer.SCHEME)
                ? new CatalogLocation.OnServer(argument, java.util.Optional.empty(), java.util.Optional.empty())
                : new CatalogLocation.InFile(Path.of(argument));
    }
}
