package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.CatalogView.Change;

/// Chooses anew among what sources state, when the shop says whom it believes.
final class SourceChoice {
    private static final String DISPUTED = "SELECT f.plant, f.attribute, f.source, f.value, f.source_rank, f.entered,"
            + " f.chosen FROM fact f JOIN (SELECT plant, attribute FROM fact GROUP BY plant, attribute"
            + " HAVING COUNT(*) > 1) d ON d.plant = f.plant AND d.attribute = f.attribute"
            + " ORDER BY f.plant, f.attribute, f.source";
    private static final String OF_PLANTS = "SELECT plant, attribute, source, value, source_rank, entered, chosen"
            + " FROM fact WHERE plant IN (<keys>) ORDER BY plant, attribute, source";
    private static final String CHOOSE = "UPDATE fact SET chosen = ? WHERE plant = ? AND attribute = ? AND source = ?";

    private final Map<Integer, Integer> weights;
    private final List<Flip> flips = new ArrayList<>();
    private FactShelf shelf;
    private int plant = -1;

    private record Flip(int plant, String attribute, int source, boolean chosen) {}

    private SourceChoice(Map<Integer, Integer> weights) {
        this.weights = weights;
        this.shelf = new FactShelf(weights);
    }

    /// Takes a preference over; when it is the one that holds, nothing is done.
    ///
    /// @return the state it made; the state it found when no choice is different
    static CatalogRevision prefer(Session session, List<String> named, Instant now) throws SQLException {
        CatalogRevision found = State.revision(session);
        SourcePreference preference = new SourcePreference(named);
        if (preference.equals(SourcePreference.read(session))) {
            return found;
        }
        preference.write(session);
        SourceChoice choice = new SourceChoice(preference.weights(session));
        session.each(DISPUTED, choice::take);
        Set<Integer> changed = choice.write(session);
        if (changed.isEmpty()) {
            return found;
        }
        CatalogRevision next = new CatalogRevision(found.number() + 1);
        changed.addAll(ChangeFeed.inheriting(session, changed));
        ChangeFeed.record(session, changed, Change.Kind.PLANT, next);
        State.advanceBook(session, next, now);
        return next;
    }

    /// Chooses anew for some plants.
    static void again(Session session, Collection<Integer> plants) throws SQLException {
        SourceChoice choice = new SourceChoice(SourcePreference.read(session).weights(session));
        Rows.forEach(session, OF_PLANTS, plants, choice::take);
        choice.write(session);
    }

    private void take(java.sql.ResultSet row) throws SQLException {
        if (row.getInt(1) != plant) {
            finish();
            plant = row.getInt(1);
        }
        shelf.put(
                row.getString(2),
                row.getInt(3),
                new FactShelf.Row(row.getString(4), row.getInt(5), row.getLong(6), row.getInt(7) == 1));
    }

    private void finish() {
        shelf.chooseAgain();
        for (FactShelf.Changed fact : shelf.changed()) {
            flips.add(
                    new Flip(plant, fact.attribute(), fact.source(), fact.row().chosen()));
        }
        shelf = new FactShelf(weights);
    }

    private Set<Integer> write(Session session) throws SQLException {
        finish();
        Set<Integer> changed = new HashSet<>();
        try (Batch batch = new Batch(session, CHOOSE)) {
            for (Flip flip : flips) {
                batch.add(flip.chosen() ? 1 : 0, flip.plant(), flip.attribute(), flip.source());
                changed.add(flip.plant());
            }
        }
        return changed;
    }
}
