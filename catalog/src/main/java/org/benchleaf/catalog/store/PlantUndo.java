package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.benchleaf.catalog.ImportRefused;
import org.benchleaf.shared.Problem;
import org.jspecify.annotations.Nullable;

/// Takes back what an import did to plants: facts, names, and the plants that it brought.
final class PlantUndo {
    private final Session session;
    private final long revision;
    private int takenOut;

    /// @param revision the state that the import made
    PlantUndo(Session session, long revision) {
        this.session = session;
        this.revision = revision;
    }

    int takenOut() {
        return takenOut;
    }

    /// Hides a plant that the import brought, with all it knows of it.
    void plant(RowChange change) throws SQLException {
        List<@Nullable String> after = change.after().orElseThrow();
        String name = String.valueOf(after.get(0));
        long later = count("SELECT COUNT(*) FROM fact WHERE plant = ? AND entered > ?", change.plant(), revision);
        long names = count("SELECT COUNT(*) FROM plant_name WHERE plant = ?", change.plant());
        boolean renamed = count("SELECT COUNT(*) FROM plant WHERE serial = ? AND name = ?", change.plant(), name) == 0;
        if (later > 0 || renamed || names != Long.parseLong(String.valueOf(after.get(1)))) {
            throw new ImportRefused(Problem.of("undo.plant.changed", name));
        }
        if (count("SELECT COUNT(*) FROM item WHERE plant = ? AND withdrawn = 0", change.plant()) > 0) {
            throw new ImportRefused(Problem.of("undo.plant.stocked", name));
        }
        session.execute("DELETE FROM fact WHERE plant = ?", change.plant());
        session.execute("DELETE FROM plant_name WHERE plant = ?", change.plant());
        session.execute("UPDATE plant SET withdrawn = 1 WHERE serial = ?", change.plant());
        takenOut++;
    }

    /// Puts a fact back, and whether it is the one shown.
    void fact(RowChange change) throws SQLException {
        String attribute = change.id().get(0);
        int source = Integer.parseInt(change.id().get(1));
        long later = count(
                "SELECT COUNT(*) FROM fact WHERE plant = ? AND attribute = ? AND entered > ?",
                change.plant(),
                attribute,
                revision);
        if (later > 0) {
            throw refused("undo.fact.changed", change.plant(), attribute);
        }
        if (change.before().isEmpty()) {
            session.execute(
                    "DELETE FROM fact WHERE plant = ? AND attribute = ? AND source = ?",
                    change.plant(),
                    attribute,
                    source);
            return;
        }
        List<@Nullable String> before = change.before().get();
        session.execute(
                "UPDATE fact SET value = ?, source_rank = ?, entered = ?, chosen = ?"
                        + " WHERE plant = ? AND attribute = ? AND source = ?",
                before.get(0),
                number(before.get(1)),
                number(before.get(2)),
                number(before.get(3)),
                change.plant(),
                attribute,
                source);
    }

    /// Puts a common name or synonym back, or takes one out.
    void name(RowChange change) throws SQLException {
        List<String> id = change.id();
        int source = Integer.parseInt(id.get(3));
        String where = " WHERE plant = ? AND kind = ? AND language = ? AND text = ? AND source = ?";
        @Nullable Object[] key = {change.plant(), id.get(0), id.get(1), id.get(2), source};
        Optional<List<@Nullable String>> found = session.first(
                "SELECT name_rank, place FROM plant_name" + where,
                row -> Arrays.asList(row.getString(1), row.getString(2)),
                key);
        if (!found.equals(change.after())) {
            throw refused("undo.name.changed", change.plant(), id.get(2));
        }
        session.execute("DELETE FROM plant_name" + where, key);
        if (change.before().isPresent()) {
            List<@Nullable String> before = change.before().get();
            session.execute(
                    "INSERT INTO plant_name (plant, kind, language, text, source, name_rank, place)"
                            + " VALUES (?, ?, ?, ?, ?, ?, ?)",
                    change.plant(),
                    id.get(0),
                    id.get(1),
                    id.get(2),
                    source,
                    number(before.get(0)),
                    number(before.get(1)));
        }
    }

    /// Gives plants their earlier names; two may have taken each other's.
    void rename(List<RowChange> renames) throws SQLException {
        for (RowChange change : renames) {
            String after = String.valueOf(change.after().orElseThrow().get(0));
            int set = session.execute(
                    "UPDATE plant SET name = plant_key WHERE serial = ? AND name = ?", change.plant(), after);
            if (set == 0) {
                throw refused("undo.name.changed", change.plant(), after);
            }
        }
        String columns =
                NameColumns.COLUMNS.stream().map(column -> column + " = ?").collect(Collectors.joining(", "));
        for (RowChange change : renames) {
            List<@Nullable String> before = change.before().orElseThrow();
            String name = String.valueOf(before.get(0));
            if (count("SELECT COUNT(*) FROM plant WHERE name = ?", name) > 0) {
                throw refused("undo.name.changed", change.plant(), name);
            }
            @Nullable Object[] values = Arrays.copyOf(before.toArray(), before.size() + 1);
            values[before.size()] = change.plant();
            session.execute("UPDATE plant SET " + columns + " WHERE serial = ?", values);
        }
    }

    private ImportRefused refused(String key, int plant, String read) throws SQLException {
        String name = session.first("SELECT name FROM plant WHERE serial = ?", row -> row.getString(1), plant)
                .orElse("");
        return new ImportRefused(Problem.of(key, read).with("plant", name));
    }

    private long count(String query, @Nullable Object... values) throws SQLException {
        return session.first(query, row -> row.getLong(1), values).orElse(0L);
    }

    private static long number(@Nullable String text) {
        return Long.parseLong(String.valueOf(text));
    }
}
