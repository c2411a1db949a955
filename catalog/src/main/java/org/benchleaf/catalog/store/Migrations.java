package org.benchleaf.catalog.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.benchleaf.catalog.CatalogUnusable;
import org.benchleaf.shared.Problem;

/// Brings a database to this program's schema: numbered files, each run once, none edited after release.
///
/// @param dialect the database's words
/// @param files the migrations in order; the n-th makes schema n
record Migrations(Dialect dialect, List<String> files) {
    static final List<String> ALL = List.of(
            "001_plants.sql",
            "002_stock.sql",
            "003_changes.sql",
            "020_sale_rules.sql",
            "010_undo.sql",
            "030_ledger.sql",
            "040_plant_lists.sql",
            "021_source_preference.sql",
            "050_accounts.sql",
            "055_walks.sql",
            "056_bulletins.sql",
            "060_prints.sql",
            "065_printed_by.sql",
            "066_customer_tier.sql");

    private static final String VERSION_TABLE = "schema_version";

    /// Makes a new catalog; refuses a database that has tables already.
    void create(Session session, String file, Instant now) throws SQLException {
        if (hasTable(session, VERSION_TABLE)) {
            throw new CatalogUnusable(Problem.of("catalog.exists", file));
        }
        if (hasTable(session, "%")) {
            throw new CatalogUnusable(Problem.of("catalog.foreign", file));
        }
        session.execute(dialect.words("CREATE TABLE " + VERSION_TABLE
                + " (version INTEGER PRIMARY KEY, name TEXT NOT NULL, sha256 TEXT NOT NULL, applied_at TEXT NOT NULL)"
                + "${strict}"));
        run(session, 0, now);
    }

    /// Brings an older catalog up to date; refuses one of a newer program, or one made by other
    /// migrations than
    /// ours.
    void update(Session session, String file, Instant now) throws SQLException {
        if (!hasTable(session, VERSION_TABLE)) {
            throw new CatalogUnusable(Problem.of("catalog.foreign", file));
        }
        Map<Integer, String> applied = new LinkedHashMap<>();
        session.each(
                "SELECT version, sha256 FROM " + VERSION_TABLE + " ORDER BY version",
                row -> applied.put(row.getInt(1), row.getString(2)));
        int found = applied.keySet().stream().mapToInt(Integer::intValue).max().orElse(0);
        if (found > files.size()) {
            throw new CatalogUnusable(Problem.of("catalog.newer", file)
                    .with("found", Integer.toString(found))
                    .with("known", Integer.toString(files.size())));
        }
        for (int version = 1; version <= found; version++) {
            String name = files.get(version - 1);
            if (!sha256(text(name)).equals(applied.get(version))) {
                throw new CatalogUnusable(
                        Problem.of("catalog.migration.changed", file).with("migration", name));
            }
        }
        run(session, found, now);
    }

    private void run(Session session, int from, Instant now) throws SQLException {
        for (int version = from + 1; version <= files.size(); version++) {
            String name = files.get(version - 1);
            String text = text(name);
            for (String statement : dialect.words(withoutRemarks(text)).split(";")) {
                if (!statement.isBlank()) {
                    session.execute(statement);
                }
            }
            session.execute(
                    "INSERT INTO " + VERSION_TABLE + " (version, name, sha256, applied_at) VALUES (?, ?, ?, ?)",
                    version,
                    name,
                    sha256(text),
                    now.toString());
        }
    }

    private static boolean hasTable(Session session, String pattern) throws SQLException {
        String schema = session.connection().getSchema(); // none in SQLite
        try (ResultSet tables =
                session.connection().getMetaData().getTables(null, schema, pattern, new String[] {"TABLE"})) {
            return tables.next();
        }
    }

    private static String withoutRemarks(String text) {
        return text.replaceAll("--[^\n]*", ""); // a remark may hold a semicolon
    }

    private static String text(String name) {
        try (InputStream stream = Migrations.class.getResourceAsStream("migrations/" + name)) {
            if (stream == null) {
                throw new IllegalStateException("missing migration " + name);
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
        } catch (IOException broken) {
            throw new UncheckedIOException("cannot read migration " + name, broken);
        }
    }

    private static String sha256(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
