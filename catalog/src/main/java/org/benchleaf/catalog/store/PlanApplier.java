package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.function.LongConsumer;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.CatalogView.Change;
import org.benchleaf.catalog.ImportRefused;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.catalog.intake.LotDraft;
import org.benchleaf.catalog.intake.PlantDraft;
import org.benchleaf.shared.Problem;

/// Applies a whole plan inside one transaction, piece by piece: plants, then stock, then the news of
/// both, then how to take it back. Of a long plan one piece is in memory at a time.
final class PlanApplier {
    private PlanApplier() {}

    /// What was written.
    ///
    /// @param reached the state it made; the state it found when nothing was different
    /// @param plants how many plants the plan is about
    /// @param lots how many lots
    record Written(CatalogRevision reached, int plants, int lots) {}

    /// @param progress hears how many rows are written
    /// @return the state it made; the state it found when nothing was different
    /// @throws ImportRefused when the catalog is no longer the plan's base, or a row contradicts it
    static CatalogRevision apply(Session session, ImportPlan plan, Instant now, LongConsumer progress)
            throws SQLException {
        long number = session.number("SELECT COALESCE(MAX(id), 0) + 1 FROM import");
        CatalogRevision reached;
        boolean changed;
        try (UndoLog log = new UndoLog(session, number)) {
            reached = write(session, plan, now, log, progress).reached();
            changed = !log.isEmpty();
        }
        session.execute(
                "INSERT INTO import (id, file, row_count, findings, revision, applied_at, changed, last_entry)"
                        + " VALUES (?, ?, ?, ?, ?, ?, ?, (SELECT COALESCE(MAX(entry), 0) FROM ledger))",
                number,
                plan.file(),
                plan.rows(),
                plan.findings().size(),
                reached.number(),
                now.toString(),
                changed ? 1 : 0);
        return reached;
    }

    /// Writes the rows of a plan and tells each one that is different.
    static Written write(Session session, ImportPlan plan, Instant now, ChangeLog log, LongConsumer progress)
            throws SQLException {
        CatalogRevision found = State.revision(session);
        if (!found.equals(plan.base())) {
            throw new ImportRefused(Problem.of("import.stale", plan.file())
                    .with("base", Long.toString(plan.base().number()))
                    .with("now", Long.toString(found.number())));
        }
        CatalogRevision next = new CatalogRevision(found.number() + 1);
        PlantNaming naming = PlantNaming.of(session, plan, log);
        List<String> formerNames = List.copyOf(naming.formerNames().values());
        PlantResolver resolver = new PlantResolver(session, naming);
        PlantWriter plants = new PlantWriter(session, plan, next.number(), log);
        long written = 0;
        for (List<PlantDraft> piece : Pieces.of(plan.plants())) {
            plants.write(resolver.resolve(piece).values());
            written += piece.size();
            progress.accept(written);
        }
        StockWriter stock = new StockWriter(session, plan.file(), resolver, next.number(), now, log);
        for (List<LotDraft> piece : Pieces.of(plan.lots())) {
            stock.write(piece);
            written += piece.size();
            progress.accept(written);
        }
        Set<Integer> plantNews = plants.news(formerNames);
        Set<Integer> stockNews = stock.news();
        int lots = plan.lots().size();
        if (plantNews.isEmpty() && stockNews.isEmpty()) {
            return new Written(found, plants.touched(), lots);
        }
        ChangeFeed.record(session, plantNews, Change.Kind.PLANT, next);
        ChangeFeed.record(session, stockNews, Change.Kind.STOCK, next);
        State.advance(session, next, now);
        return new Written(next, plants.touched(), lots);
    }
}
