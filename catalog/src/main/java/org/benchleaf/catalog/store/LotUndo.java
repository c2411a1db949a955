package org.benchleaf.catalog.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.benchleaf.catalog.ImportRefused;
import org.benchleaf.shared.Problem;
import org.jspecify.annotations.Nullable;

/// Takes back what an import did to items and lots. The ledger only grows: a count is put back by an entry of its
/// own.
final class LotUndo {
    /// Where the count stands among a lot's columns; the order is that of the query below.
    private static final int COUNT = 3;

    private static final int COLUMNS = 6;

    private static final String LOT =
            "SELECT item, place, ready_week, on_hand, conditions, seen_on FROM lot WHERE lot = ? AND withdrawn = 0";

    private final Session session;
    private final LedgerEntries entries;
    private final long number;
    private final long lastEntry;
    private final String file;
    private final Instant now;
    private int takenOut;
    private int restored;

    /// @param number of the import
    /// @param lastEntry the newest ledger entry after it
    LotUndo(Session session, LedgerEntries entries, long number, long lastEntry, String file, Instant now) {
        this.session = session;
        this.entries = entries;
        this.number = number;
        this.lastEntry = lastEntry;
        this.file = file;
        this.now = now;
    }

    int takenOut() {
        return takenOut;
    }

    int restored() {
        return restored;
    }

    private static List<@Nullable String> columns(ResultSet row) throws SQLException {
        List<@Nullable String> columns = new ArrayList<>();
        for (int place = 1; place <= COLUMNS; place++) {
            columns.add(row.getString(place));
        }
        return columns;
    }

    void lot(RowChange change) throws SQLException {
        String lot = change.id().get(0);
        List<@Nullable String> after = change.after().orElseThrow();
        List<@Nullable String> found = session.<List<@Nullable String>>first(LOT, LotUndo::columns, lot)
                .orElseThrow(() -> new ImportRefused(Problem.of("undo.lot.changed", lot)));
        boolean counted =
                change.before().isEmpty() || !change.before().get().get(COUNT).equals(after.get(COUNT));
        long later = session.first(
                        "SELECT COUNT(*) FROM ledger WHERE lot = ? AND entry > ?",
                        row -> row.getLong(1),
                        lot,
                        lastEntry)
                .orElse(0L);
        if (counted && later > 0) {
            throw new ImportRefused(Problem.of("undo.lot.counted", lot).with("entries", Long.toString(later)));
        }
        if (!withoutCount(found).equals(withoutCount(after))) {
            throw new ImportRefused(Problem.of("undo.lot.changed", lot));
        }
        int count = number(found.get(COUNT));
        int earlier = change.before().map(before -> number(before.get(COUNT))).orElse(0);
        if (counted && earlier != count) {
            entries.add(
                    LedgerRow.counted(lot, earlier - count, earlier, now, "undo", file, "undo:" + number + ":" + lot));
        }
        int onHand = counted ? earlier : count;
        if (change.before().isEmpty()) {
            session.execute("UPDATE lot SET on_hand = ?, withdrawn = 1 WHERE lot = ?", onHand, lot);
            takenOut++;
            return;
        }
        List<@Nullable String> before = change.before().get();
        session.execute(
                "UPDATE lot SET item = ?, place = ?, ready_week = ?, on_hand = ?, conditions = ?, seen_on = ?"
                        + " WHERE lot = ?",
                number(before.get(0)),
                before.get(1),
                before.get(2),
                onHand,
                before.get(4),
                before.get(5),
                lot);
        restored++;
    }

    void item(RowChange change) throws SQLException {
        int item = Integer.parseInt(change.id().get(0));
        String size = change.id().get(1);
        Optional<List<@Nullable String>> found = session.first(
                "SELECT gtin, price FROM item WHERE plant = ? AND number = ? AND withdrawn = 0",
                row -> Arrays.asList(row.getString(1), row.getString(2)),
                change.plant(),
                item);
        if (!found.equals(change.after())) {
            throw refused("undo.item.changed", change.plant(), size);
        }
        if (change.before().isPresent()) {
            List<@Nullable String> before = change.before().get();
            session.execute(
                    "UPDATE item SET gtin = ?, price = ? WHERE plant = ? AND number = ?",
                    before.get(0),
                    before.get(1),
                    change.plant(),
                    item);
            return;
        }
        long used = session.first(
                        "SELECT COUNT(*) FROM lot WHERE plant = ? AND item = ? AND withdrawn = 0",
                        row -> row.getLong(1),
                        change.plant(),
                        item)
                .orElse(0L);
        if (used > 0) {
            throw refused("undo.item.used", change.plant(), size);
        }
        session.execute(
                "UPDATE item SET withdrawn = 1, gtin = NULL, price = NULL WHERE plant = ? AND number = ?",
                change.plant(),
                item);
    }

    private ImportRefused refused(String key, int plant, String size) throws SQLException {
        String name = session.first("SELECT name FROM plant WHERE serial = ?", row -> row.getString(1), plant)
                .orElse("");
        return new ImportRefused(Problem.of(key, size).with("plant", name));
    }

    private static List<@Nullable String> withoutCount(List<@Nullable String> lot) {
        List<@Nullable String> others = new java.util.ArrayList<>(lot);
        others.remove(COUNT);
        return others;
    }

    private static int number(@Nullable String text) {
        return Integer.parseInt(String.valueOf(text));
    }
}
