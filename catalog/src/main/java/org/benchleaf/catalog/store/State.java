package org.benchleaf.catalog.store;

import java.time.Instant;
import java.util.Optional;
import org.benchleaf.catalog.CatalogRevision;
import org.jdbi.v3.core.Handle;

/// The one row that says which state the catalog is in.
final class State {
    private State() {}

    static CatalogRevision revision(Handle handle) {
        return new CatalogRevision(handle.createQuery("SELECT revision FROM catalog_state")
                .mapTo(Long.class)
                .one());
    }

    static Optional<Instant> changedAt(Handle handle) {
        return handle.createQuery("SELECT changed_at FROM catalog_state WHERE changed_at IS NOT NULL")
                .mapTo(String.class)
                .findOne()
                .map(Instant::parse);
    }

    /// Makes the next state; the caller holds the only right to write.
    static void advance(Handle handle, CatalogRevision to, Instant now) {
        handle.execute("UPDATE catalog_state SET revision = ?, changed_at = ?", to.number(), now.toString());
    }
}
