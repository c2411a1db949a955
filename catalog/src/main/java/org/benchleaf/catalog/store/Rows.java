package org.benchleaf.catalog.store;

import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/// Reads rows for many keys at once: one query for up to [#MOST] of them, on the bare driver because this
/// is the hot path.
final class Rows {
    /// Keys in one query; a database takes some thousands.
    static final int MOST = 512;

    /// Where the list of keys goes in a query.
    private static final String LIST = "<keys>";

    private Rows() {}

    /// Takes one row of an answer.
    interface Taker {
        void take(ResultSet row) throws SQLException;
    }

    /// Hands over the rows of a query that holds `IN (<keys>)` once.
    static void forEach(Session session, String query, Collection<?> keys, Taker taker) throws SQLException {
        List<?> all = new ArrayList<>(keys);
        for (int from = 0; from < all.size(); from += MOST) {
            List<?> some = all.subList(from, Math.min(all.size(), from + MOST));
            int places = Math.max(1, Integer.highestOneBit(some.size() * 2 - 1)); // few texts of one query
            String marks = "?, ".repeat(places - 1) + "?";
            session.prepared(query.replace(LIST, marks), statement -> {
                for (int place = 0; place < places; place++) {
                    bind(statement, place + 1, some.get(Math.min(place, some.size() - 1)));
                }
                return Session.handOver(statement, taker);
            });
        }
    }

    private static void bind(PreparedStatement statement, int place, Object key) throws SQLException {
        if (key instanceof Integer number) {
            statement.setInt(place, number);
        } else {
            statement.setString(place, key.toString());
        }
    }
}
