package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.time.Instant;
import java.util.Map;
import java.util.Set;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.CatalogView.Change;
import org.benchleaf.catalog.ImportRefused;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.shared.Problem;

/// Applies a whole plan inside one transaction: plants, then stock, then the news of both.
final class PlanApplier {
    private PlanApplier() {}

    /// @return the state it made; the state it found when nothing was different
    /// @throws ImportRefused when the catalog is no longer the plan's base, or a row contradicts it
    static CatalogRevision apply(Session session, ImportPlan plan, Instant now) throws SQLException {
        CatalogRevision found = State.revision(session);
        if (!found.equals(plan.base())) {
            throw new ImportRefused(Problem.of("import.stale", plan.file())
                    .with("base", Long.toString(plan.base().number()))
                    .with("now", Long.toString(found.number())));
        }
        CatalogRevision next = new CatalogRevision(found.number() + 1);
        PlantResolver plants = new PlantResolver(session, plan);
        Map<Integer, PlantEdit> edits = plants.resolve(plan.plants());
        Set<Integer> plantNews = new PlantWriter(session, plan, next.number()).write(edits.values());
        Set<Integer> stockNews = new StockWriter(session, plan, plants, next.number(), now).write();
        ChangeFeed.record(session, plantNews, Change.Kind.PLANT, next);
        ChangeFeed.record(session, stockNews, Change.Kind.STOCK, next);
        boolean same = plantNews.isEmpty() && stockNews.isEmpty();
        CatalogRevision reached = same ? found : next;
        if (!same) {
            State.advance(session, next, now);
        }
        recordImport(session, plan, reached, now);
        return reached;
    }

    private static void recordImport(Session session, ImportPlan plan, CatalogRevision reached, Instant now)
            throws SQLException {
        session.execute(
                "INSERT INTO import (id, file, row_count, findings, revision, applied_at)"
                        + " VALUES ((SELECT COALESCE(MAX(id), 0) + 1 FROM import), ?, ?, ?, ?, ?)",
                plan.file(),
                plan.rows(),
                plan.findings().size(),
                reached.number(),
                now.toString());
    }
}
