package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/// Whom the shop believes when sources disagree: a name stands for the source of that name and for those
/// that begin with it, `USDA PLANTS` for `USDA PLANTS characteristics, 2026`.
///
/// @param named the best first
record SourcePreference(List<String> named) {
    SourcePreference {
        named = List.copyOf(named);
    }

    static SourcePreference read(Session session) throws SQLException {
        return new SourcePreference(
                session.list("SELECT text FROM source_preference ORDER BY place", row -> row.getString(1)));
    }

    void write(Session session) throws SQLException {
        session.execute("DELETE FROM source_preference");
        for (int place = 0; place < named.size(); place++) {
            session.execute("INSERT INTO source_preference (place, text) VALUES (?, ?)", place, named.get(place));
        }
    }

    /// How much a source is believed; 0 for one that is not named, more for a better one.
    int weight(String source) {
        String wanted = source.toLowerCase(Locale.ROOT);
        for (int place = 0; place < named.size(); place++) {
            String name = named.get(place).toLowerCase(Locale.ROOT);
            boolean begins = wanted.startsWith(name)
                    && (wanted.length() == name.length() || !Character.isLetterOrDigit(wanted.charAt(name.length())));
            if (begins) {
                return named.size() - place;
            }
        }
        return 0;
    }

    /// The weights of all sources that are known.
    Map<Integer, Integer> weights(Session session) throws SQLException {
        Map<Integer, Integer> weights = new HashMap<>();
        session.each("SELECT id, text FROM source", row -> weights.put(row.getInt(1), weight(row.getString(2))));
        return weights;
    }
}
