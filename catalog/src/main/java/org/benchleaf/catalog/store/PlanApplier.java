package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.LongConsumer;
import java.util.stream.Collectors;
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
    private static final String LOTS = "SELECT lot, moved FROM lot WHERE lot IN (<keys>)";
    private static final int MOST_TOLD = 5;

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
        refuseStale(session, plan, found);
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
        State.advanceBook(session, next, now);
        return new Written(next, plants.touched(), lots);
    }

    /// Stock moves all day: a plan stands while names, facts and its own lots are as it was made against.
    private static void refuseStale(Session session, ImportPlan plan, CatalogRevision found) throws SQLException {
        CatalogRevision base = plan.base();
        if (base.compareTo(State.bookRevision(session)) < 0 || base.compareTo(found) > 0) {
            throw new ImportRefused(Problem.of("import.stale", plan.file())
                    .with("base", Long.toString(base.number()))
                    .with("now", Long.toString(found.number())));
        }
        Set<String> moved = new TreeSet<>();
        for (List<LotDraft> piece : Pieces.of(plan.lots())) {
            List<String> lots = piece.stream().map(LotDraft::lot).distinct().toList();
            Rows.forEach(session, LOTS, lots, row -> {
                if (row.getLong(2) > base.number()) {
                    moved.add(row.getString(1));
                }
            });
        }
        if (!moved.isEmpty()) {
            String some = moved.stream().limit(MOST_TOLD).collect(Collectors.joining(", "));
            throw new ImportRefused(Problem.of("import.stale.lots", plan.file())
                    .with("lots", moved.size() > MOST_TOLD ? some + ", ..." : some)
                    .with("count", Integer.toString(moved.size())));
        }
    }
}
