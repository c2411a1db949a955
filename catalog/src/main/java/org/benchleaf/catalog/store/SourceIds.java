package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.util.HashMap;
import java.util.Map;
import org.benchleaf.shared.fact.Source;

/// The numbers of sources for one writing transaction; a source met for the first time gets the next one.
final class SourceIds {
    private final Map<String, Integer> byText = new HashMap<>();
    private final Map<Integer, Integer> weights = new HashMap<>();
    private final SourcePreference preference;
    private final Session session;
    private int next;

    SourceIds(Session session) throws SQLException {
        this.session = session;
        this.preference = SourcePreference.read(session);
        session.each("SELECT id, text FROM source", row -> know(row.getString(2), row.getInt(1)));
        this.next = byText.values().stream().mapToInt(Integer::intValue).max().orElse(0) + 1;
    }

    int of(Source source) throws SQLException {
        Integer known = byText.get(source.text());
        if (known != null) {
            return known;
        }
        int id = next++;
        session.execute("INSERT INTO source (id, text) VALUES (?, ?)", id, source.text());
        know(source.text(), id);
        return id;
    }

    private void know(String text, int id) {
        byText.put(text, id);
        weights.put(id, preference.weight(text));
    }

    /// How much the shop believes each source that was met, by number; grows as sources are met.
    Map<Integer, Integer> weights() {
        return weights;
    }
}
