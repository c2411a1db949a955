package org.benchleaf.catalog.store;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.benchleaf.shared.fact.Source;
import org.jdbi.v3.core.Handle;

/// The sources by their number, as readers need them: rows are only ever added, so one read once stays true.
final class Sources {
    private final Map<Integer, Source> byId = new ConcurrentHashMap<>();

    Source of(Handle handle, int id) {
        Source known = byId.get(id);
        if (known != null) {
            return known;
        }
        handle.createQuery("SELECT id, text FROM source")
                .map((row, context) -> byId.put(row.getInt(1), new Source(row.getString(2))))
                .list();
        Source found = byId.get(id);
        if (found == null) {
            throw new IllegalStateException("a fact names source " + id + ", which is not there");
        }
        return found;
    }
}
