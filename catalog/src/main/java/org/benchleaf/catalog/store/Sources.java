package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.benchleaf.shared.fact.Source;

/// The sources by their number, as readers need them: rows are only ever added, so one read once stays true.
final class Sources {
    private final Map<Integer, Source> byId = new ConcurrentHashMap<>();

    Source of(Session session, int id) throws SQLException {
        Source known = byId.get(id);
        if (known != null) {
            return known;
        }
        session.each("SELECT id, text FROM source", row -> byId.put(row.getInt(1), new Source(row.getString(2))));
        Source found = byId.get(id);
        if (found == null) {
            throw new IllegalStateException("a fact names source " + id + ", which is not there");
        }
        return found;
    }
}
