package org.benchleaf.catalog.store;

import java.util.HashMap;
import java.util.Map;
import org.benchleaf.shared.fact.Source;
import org.jdbi.v3.core.Handle;

/// The numbers of sources for one writing transaction; a source met for the first time gets the next one.
final class SourceIds {
    private final Map<String, Integer> byText = new HashMap<>();
    private final Handle handle;
    private int next;

    SourceIds(Handle handle) {
        this.handle = handle;
        handle.createQuery("SELECT id, text FROM source")
                .map((row, context) -> byText.put(row.getString(2), row.getInt(1)))
                .list();
        this.next = byText.values().stream().mapToInt(Integer::intValue).max().orElse(0) + 1;
    }

    int of(Source source) {
        Integer known = byText.get(source.text());
        if (known != null) {
            return known;
        }
        int id = next++;
        handle.execute("INSERT INTO source (id, text) VALUES (?, ?)", id, source.text());
        byText.put(source.text(), id);
        return id;
    }
}
