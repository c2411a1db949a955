package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.CatalogView.Change;
import org.benchleaf.catalog.ImportRefused;
import org.benchleaf.catalog.NewestImport;
import org.benchleaf.catalog.UndoneImport;
import org.benchleaf.shared.Problem;
import org.jspecify.annotations.Nullable;

/// Takes the newest import back, row by row from the last to the first, inside one transaction; refuses
/// as a whole when anything later stands on it.
final class ImportUndo {
    private static final String NEWEST = "SELECT id, file, revision, last_entry, applied_at FROM import"
            + " WHERE changed = 1 AND undone_at IS NULL ORDER BY id DESC LIMIT 1";
    private static final String ROWS =
            "SELECT thing, plant, id, before, after FROM import_change WHERE import = ?" + " ORDER BY seq DESC";

    private record Import(long id, String file, long revision, long lastEntry, Instant appliedAt) {}

    private final Session session;
    private final Import undone;
    private final PlantUndo plants;
    private final LotUndo lots;

    private ImportUndo(Session session, Import undone, LedgerEntries entries, Instant now) {
        this.session = session;
        this.undone = undone;
        this.plants = new PlantUndo(session, undone.revision());
        this.lots = new LotUndo(session, entries, undone.id(), undone.lastEntry(), undone.file(), now);
    }

    /// @throws ImportRefused `undo.none`, `undo.too-old`, or what stands on the import: `undo.plant.changed`,
    /// `undo.plant.stocked`, `undo.name.changed`, `undo.fact.changed`, `undo.item.changed`,
    /// `undo.item.used`, `undo.lot.changed`, `undo.lot.counted`
    static UndoneImport undo(Session session, Instant now) throws SQLException {
        Import newest = session.first(
                        NEWEST,
                        row -> new Import(
                                row.getLong(1),
                                row.getString(2),
                                row.getLong(3),
                                row.getLong(4),
                                Instant.parse(row.getString(5))))
                .orElseThrow(() -> new ImportRefused(Problem.of("undo.none", "")));
        try (LedgerEntries entries = new LedgerEntries(session, now)) {
            return new ImportUndo(session, newest, entries, now).run(now);
        }
    }

    static Optional<NewestImport> newest(Session session) throws SQLException {
        return session.first(
                NEWEST, row -> new NewestImport(row.getLong(1), row.getString(2), Instant.parse(row.getString(5))));
    }

    private UndoneImport run(Instant now) throws SQLException {
        List<RowChange> renames = new java.util.ArrayList<>();
        Set<Integer> touched = new HashSet<>();
        Set<Integer> stocked = new HashSet<>();
        session.each(
                ROWS,
                row -> {
                    RowChange change = change(row);
                    (change.thing() == RowChange.Thing.ITEM || change.thing() == RowChange.Thing.LOT
                                    ? stocked
                                    : touched)
                            .add(change.plant());
                    switch (change.thing()) {
                        case LOT -> lots.lot(change);
                        case ITEM -> lots.item(change);
                        case PLANT -> plants.plant(change);
                        case FACT -> plants.fact(change);
                        case NAME -> plants.name(change);
                        case RENAME -> renames.add(change);
                    }
                },
                undone.id());
        if (touched.isEmpty() && stocked.isEmpty()) {
            throw new ImportRefused(
                    Problem.of("undo.too-old", undone.file()).with("kept", Integer.toString(UndoLog.KEPT)));
        }
        plants.rename(renames);
        SourceChoice.again(session, touched); // whom the shop believes may be another since
        CatalogRevision next = new CatalogRevision(State.revision(session).number() + 1);
        Set<Integer> news = new HashSet<>(touched);
        news.addAll(ChangeFeed.inheriting(session, touched));
        ChangeFeed.record(session, news, Change.Kind.PLANT, next);
        ChangeFeed.record(session, stocked, Change.Kind.STOCK, next);
        State.advanceBook(session, next, now);
        session.execute("UPDATE import SET undone_at = ? WHERE id = ?", now.toString(), undone.id());
        session.execute("DELETE FROM import_change WHERE import = ?", undone.id());
        return new UndoneImport(
                undone.file(),
                undone.appliedAt(),
                next,
                plants.takenOut(),
                touched.size() - plants.takenOut(),
                lots.takenOut(),
                lots.restored());
    }

    private static RowChange change(java.sql.ResultSet row) throws SQLException {
        List<String> id = RowChange.read(row.getString(3)).stream()
                .map(part -> part == null ? "" : part)
                .toList();
        return new RowChange(
                RowChange.Thing.of(row.getString(1)),
                row.getInt(2),
                id,
                image(row.getString(4)),
                image(row.getString(5)));
    }

    private static Optional<List<@Nullable String>> image(@Nullable String json) {
        return json == null ? Optional.empty() : Optional.of(RowChange.read(json));
    }
}
