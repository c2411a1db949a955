package org.benchleaf.catalog;

import java.nio.file.Path;
import java.util.Optional;

/// Where a catalog lies.
public sealed interface CatalogLocation {
    /// In a file of SQLite.
    record InFile(Path file) implements CatalogLocation {}

    /// In a schema of a PostgreSQL server, which several programs may use at once.
    ///
    /// @param url `jdbc:postgresql://host:port/database`, with `?currentSchema=...` for another than the usual
    ///     schema; holds no password
    /// @param user empty for the one the URL or the machine gives
    /// @param password never shown
    record OnServer(String url, Optional<String> user, Optional<String> password) implements CatalogLocation {
        public static final String SCHEME = "jdbc:postgresql:";

        public OnServer {
            if (!url.startsWith(SCHEME)) {
                throw new IllegalArgumentException("an address of a database begins with " + SCHEME);
            }
        }

        /// The address without its parameters, as messages show it.
        public String shown() {
            int parameters = url.indexOf('?');
            return parameters < 0 ? url : url.substring(0, parameters);
        }

        /// A password must not get into a log.
        @Override
        public String toString() {
            return shown();
        }
    }
}
