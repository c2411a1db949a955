package org.benchleaf.catalog.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.benchleaf.catalog.prints.PrintEntry;
import org.benchleaf.catalog.prints.PrintLedger;
import org.benchleaf.catalog.prints.PrintedBase;
import org.benchleaf.catalog.prints.PrintedEntry;
import org.benchleaf.shared.code.PlantKey;

/// The print ledger in the database. It is no part of the catalog's state: printing changes no revision.
final class SqlPrintLedger implements PrintLedger {
    private static final String COLUMNS =
            "entry, printed_at, document, format, plant, item, detail, name, price, address, digest, copies, who";
    private static final String INSERT =
            "INSERT INTO print_entry (" + COLUMNS + ", base) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)";
    private static final String NEWEST = "SELECT " + COLUMNS + " FROM print_entry WHERE entry IN"
            + " (SELECT MAX(entry) FROM print_entry WHERE document = ? GROUP BY format, plant, item, detail)"
            + " AND printed_at >= ? ORDER BY entry";

    private final Database database;
    private final Clock clock;
    private final String who;

    SqlPrintLedger(Database database, Clock clock) {
        this(database, clock, "");
    }

    private SqlPrintLedger(Database database, Clock clock, String who) {
        this.database = database;
        this.clock = clock;
        this.who = who;
    }

    @Override
    public PrintLedger by(String other) {
        return new SqlPrintLedger(database, clock, other);
    }

    @Override
    public void add(List<PrintEntry> printed) {
        database.write(session -> {
            long number = session.number("SELECT COALESCE(MAX(entry), 0) FROM print_entry");
            String now = clock.instant().truncatedTo(ChronoUnit.SECONDS).toString();
            for (PrintEntry entry : printed) {
                session.execute(
                        INSERT,
                        ++number,
                        now,
                        entry.document(),
                        entry.format(),
                        entry.plant().text(),
                        entry.item().orElse(null),
                        entry.detail(),
                        entry.name(),
                        entry.price().orElse(null),
                        entry.address(),
                        entry.digest(),
                        entry.copies(),
                        who,
                        entry.base());
            }
            return printed.size();
        });
    }

    @Override
    public List<PrintedEntry> newest(String document, Instant since) {
        return database.read(session -> session.list(
                NEWEST,
                SqlPrintLedger::entry,
                document,
                since.truncatedTo(ChronoUnit.SECONDS).toString()));
    }

    @Override
    public List<PrintedEntry> last(int most) {
        return database.read(session -> session.list(
                "SELECT " + COLUMNS + " FROM print_entry ORDER BY entry DESC LIMIT ?", SqlPrintLedger::entry, most));
    }

    @Override
    public List<PrintedBase> bases() {
        return database.read(session -> session.list(
                "SELECT base, SUM(copies), MAX(printed_at) FROM print_entry GROUP BY base ORDER BY MAX(printed_at)"
                        + " DESC, base",
                row -> new PrintedBase(row.getString(1), row.getLong(2), Instant.parse(row.getString(3)))));
    }

    private static PrintedEntry entry(ResultSet row) throws SQLException {
        int item = row.getInt("item");
        return new PrintedEntry(
                row.getLong("entry"),
                Instant.parse(row.getString("printed_at")),
                new PrintEntry(
                        row.getString("document"),
                        row.getString("format"),
                        new PlantKey(row.getString("plant")),
                        item == 0 ? Optional.empty() : Optional.of(item),
                        row.getString("detail"),
                        row.getString("name"),
                        Optional.ofNullable(row.getString("price")),
                        row.getString("address"),
                        row.getString("digest"),
                        row.getInt("copies")),
                row.getString("who"));
    }
}
