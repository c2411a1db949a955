package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.util.Collection;
import java.util.HashSet;
import java.util.Set;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.CatalogView.Change;

/// Writes which plants are different in a new state.
final class ChangeFeed {
    private static final String RECORD = "INSERT INTO plant_change (plant, kind, revision) VALUES (?, ?, ?)"
            + " ON CONFLICT (plant, kind) DO UPDATE SET revision = excluded.revision";
    private static final String CULTIVARS =
            "SELECT c.serial FROM plant t JOIN plant c ON c.taxon_name = t.name" + " WHERE t.serial IN (<keys>)";

    private ChangeFeed() {}

    static void record(Session session, Collection<Integer> plants, Change.Kind kind, CatalogRevision revision)
            throws SQLException {
        try (Batch batch = new Batch(session, RECORD)) {
            for (int plant : plants) {
                batch.add(plant, kind.name(), revision.number());
            }
        }
    }

    /// The plants that inherit from these, through two levels: what a species states is news of its cultivars too.
    static Set<Integer> inheriting(Session session, Collection<Integer> plants) throws SQLException {
        Set<Integer> below = new HashSet<>();
        Rows.forEach(session, CULTIVARS, plants, row -> below.add(row.getInt(1)));
        Set<Integer> lowest = new HashSet<>();
        Rows.forEach(session, CULTIVARS, below, row -> lowest.add(row.getInt(1)));
        below.addAll(lowest);
        return below;
    }
}
