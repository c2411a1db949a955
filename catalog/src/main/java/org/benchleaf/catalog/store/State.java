package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.time.Instant;
import java.util.Optional;
import org.benchleaf.catalog.CatalogRevision;

/// The one row that says which state the catalog is in.
final class State {
    private State() {}

    static CatalogRevision revision(Session session) throws SQLException {
        return new CatalogRevision(session.number("SELECT revision FROM catalog_state"));
    }

    static Optional<Instant> changedAt(Session session) throws SQLException {
        return session.first(
                "SELECT changed_at FROM catalog_state WHERE changed_at IS NOT NULL",
                row -> Instant.parse(row.getString(1)));
    }

    /// The state that the last import or its undo made: names and facts are as they were then.
    static CatalogRevision bookRevision(Session session) throws SQLException {
        return new CatalogRevision(session.number("SELECT book_revision FROM catalog_state"));
    }

    /// Makes the next state, with other names or facts or lots than a plan knows of.
    static void advanceBook(Session session, CatalogRevision to, Instant now) throws SQLException {
        session.execute(
                "UPDATE catalog_state SET revision = ?, book_revision = ?, changed_at = ?",
                to.number(),
                to.number(),
                now.toString());
    }

    /// Makes the next state; the caller holds the only right to write.
    static void advance(Session session, CatalogRevision to, Instant now) throws SQLException {
        session.execute("UPDATE catalog_state SET revision = ?, changed_at = ?", to.number(), now.toString());
    }
}
