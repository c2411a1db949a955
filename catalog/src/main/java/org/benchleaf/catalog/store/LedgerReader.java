package org.benchleaf.catalog.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.catalog.ledger.Hold;
import org.benchleaf.catalog.ledger.LedgerLine;
import org.benchleaf.catalog.model.LedgerKind;
import org.benchleaf.shared.Term;

/// Reads the ledger back: what was said under a key, a lot's entries, what is left of holds.
final class LedgerReader {
    private static final String SAID = "SELECT idempotency_key, lot, kind, stated, hold, held_until, other_lot, detail"
            + " FROM ledger WHERE idempotency_key IN (<keys>)";
    private static final String LINES = "SELECT entry, lot, kind, quantity, stated, hold, held_until, other_lot,"
            + " detail, happened_at, entered_at, who, why, idempotency_key FROM ledger WHERE lot = ?"
            + " ORDER BY entry DESC LIMIT ?";
    private static final String COUNT = "SELECT COALESCE(SUM(quantity), 0) FROM ledger WHERE lot = ?";
    private static final String HOLDS = "SELECT h.hold, h.lot, h.quantity, h.held_until, e.who, e.why FROM hold h"
            + " JOIN ledger e ON e.idempotency_key = h.hold WHERE ";

    private LedgerReader() {}

    /// What was said under these keys.
    static Map<String, LedgerRow.Said> said(Session session, Collection<String> keys) throws SQLException {
        Map<String, LedgerRow.Said> said = new HashMap<>();
        Rows.forEach(
                session,
                SAID,
                keys,
                row -> said.put(
                        row.getString(1),
                        new LedgerRow.Said(
                                row.getString(2),
                                kind(row.getString(3)),
                                row.getInt(4),
                                Optional.ofNullable(row.getString(5)),
                                Optional.ofNullable(row.getString(6)),
                                Optional.ofNullable(row.getString(7)),
                                row.getString(8))));
        return said;
    }

    private static LedgerKind kind(String term) {
        return Term.read(LedgerKind.class, term).orThrow();
    }

    /// The newest lines of a lot, the oldest of them first. Counts are worked out backward from the sum of all.
    static List<LedgerLine> lines(Session session, String lot, int most) throws SQLException {
        int[] count = {session.first(COUNT, row -> row.getInt(1), lot).orElse(0)};
        List<LedgerLine> newestFirst = new ArrayList<>();
        session.each(
                LINES,
                row -> {
                    newestFirst.add(line(row, count[0]));
                    count[0] -= row.getInt(4);
                },
                lot,
                most);
        return newestFirst.reversed();
    }

    private static LedgerLine line(ResultSet row, int count) throws SQLException {
        return new LedgerLine(
                row.getLong(1),
                row.getString(2),
                kind(row.getString(3)),
                row.getInt(4),
                row.getInt(5),
                count,
                Optional.ofNullable(row.getString(6)),
                Optional.ofNullable(row.getString(7)).map(Instant::parse),
                Optional.ofNullable(row.getString(8)),
                row.getString(9),
                Instant.parse(row.getString(10)),
                Instant.parse(row.getString(11)),
                row.getString(12),
                row.getString(13),
                Optional.ofNullable(row.getString(14)));
    }

    static Optional<Hold> hold(Session session, String key) throws SQLException {
        return session.first(HOLDS + "h.hold = ?", LedgerReader::hold, key);
    }

    static List<Hold> holds(Session session, String lot) throws SQLException {
        return session.list(HOLDS + "h.lot = ? ORDER BY e.entry", LedgerReader::hold, lot);
    }

    private static Hold hold(ResultSet row) throws SQLException {
        return new Hold(
                row.getString(1),
                row.getString(2),
                row.getInt(3),
                Optional.ofNullable(row.getString(4)).map(Instant::parse),
                row.getString(5),
                row.getString(6));
    }
}
