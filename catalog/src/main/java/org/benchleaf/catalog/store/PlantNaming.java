package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.benchleaf.catalog.ImportRefused;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.catalog.intake.PlantDraft;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.name.BotanicalName;
import org.jspecify.annotations.Nullable;

/// Gives the plants that a plan names by key their names, before any other row is looked at: so plants
/// may take each other's names, and a row without a key finds the plant that has the name now. Works
/// through the plan in pieces.
final class PlantNaming {
    static final String NEW_PLANT = "INSERT INTO plant (" + String.join(", ", NameColumns.COLUMNS)
            + ", plant_key, serial) VALUES (" + "?, ".repeat(NameColumns.COLUMNS.size()) + "?, ?)";
    private static final String BY_KEY = "SELECT * FROM plant WHERE plant_key IN (<keys>)";
    private static final String OWNERS = "SELECT name, plant_key FROM plant WHERE name IN (<keys>)";
    private static final String RENAME = "UPDATE plant SET "
            + NameColumns.COLUMNS.stream().map(column -> column + " = ?").collect(Collectors.joining(", "))
            + " WHERE serial = ?";
    /// Two plants may take each other's name; no plant's name is a key.
    private static final String SET_ASIDE = "UPDATE plant SET name = plant_key WHERE serial = ?";

    private final Session session;
    private final ChangeLog log;
    private final BitSet made = new BitSet();
    private final Map<Integer, String> formerNames = new HashMap<>();
    private int nextSerial;

    private PlantNaming(Session session, ChangeLog log) throws SQLException {
        this.session = session;
        this.log = log;
        this.nextSerial = (int) session.number("SELECT COALESCE(MAX(serial) + 1, 0) FROM plant");
    }

    /// Renames and makes what the plan's keys ask for.
    ///
    /// @throws ImportRefused when a row gives a plant the name of another one
    static PlantNaming of(Session session, ImportPlan plan, ChangeLog log) throws SQLException {
        PlantNaming naming = new PlantNaming(session, log);
        for (List<PlantDraft> piece : Pieces.of(plan.plants())) {
            naming.setAside(keyed(piece));
        }
        for (List<PlantDraft> piece : Pieces.of(plan.plants())) {
            naming.name(keyed(piece));
        }
        return naming;
    }

    /// The first serial that no plant has.
    int nextSerial() {
        return nextSerial;
    }

    /// Plants that were made, by serial.
    BitSet made() {
        return made;
    }

    /// The plain names that plants had before, by serial.
    Map<Integer, String> formerNames() {
        return formerNames;
    }

    private static List<PlantDraft> keyed(List<PlantDraft> piece) {
        return piece.stream().filter(draft -> draft.key().isPresent()).toList();
    }

    private record Stored(int serial, BotanicalName name) {}

    private Map<PlantKey, Stored> stored(Collection<PlantDraft> drafts) throws SQLException {
        Map<PlantKey, Stored> stored = new HashMap<>();
        Set<PlantKey> keys =
                drafts.stream().flatMap(draft -> draft.key().stream()).collect(Collectors.toSet());
        Rows.forEach(
                session,
                BY_KEY,
                keys,
                row -> stored.put(
                        new PlantKey(row.getString("plant_key")),
                        new Stored(row.getInt("serial"), NameColumns.read(row))));
        return stored;
    }

    private void setAside(List<PlantDraft> drafts) throws SQLException {
        if (drafts.isEmpty()) {
            return;
        }
        Map<PlantKey, Stored> stored = stored(drafts);
        try (Batch aside = new Batch(session, SET_ASIDE)) {
            for (PlantDraft draft : drafts) {
                Stored plant = stored.get(draft.key().orElseThrow());
                if (plant != null && !plant.name().equals(draft.name())) {
                    aside.add(plant.serial());
                }
            }
        }
    }

    private void name(List<PlantDraft> drafts) throws SQLException {
        if (drafts.isEmpty()) {
            return;
        }
        Map<PlantKey, Stored> stored = stored(drafts);
        refuseSharedNames(drafts);
        Set<PlantKey> seen = new HashSet<>();
        try (Batch insert = new Batch(session, NEW_PLANT);
                Batch rename = new Batch(session, RENAME)) {
            for (PlantDraft draft : drafts) {
                PlantKey key = draft.key().orElseThrow();
                Stored plant = stored.get(key);
                if (!seen.add(key)) {
                    continue;
                }
                @Nullable Object[] columns = NameColumns.values(draft.name());
                if (plant == null) {
                    made.set(nextSerial);
                    insert.add(with(with(columns, key), nextSerial));
                    nextSerial++;
                } else if (!plant.name().equals(draft.name())) {
                    rename.add(with(columns, plant.serial()));
                    formerNames.put(plant.serial(), plant.name().toString());
                    log.add(RowChange.renamed(plant.serial(), plant.name(), draft.name()));
                }
            }
        }
    }

    /// The names that other plants keep, or were given before by this plan.
    private void refuseSharedNames(List<PlantDraft> drafts) throws SQLException {
        Map<String, PlantKey> owners = new HashMap<>();
        Rows.forEach(
                session,
                OWNERS,
                drafts.stream().map(draft -> draft.name().toString()).collect(Collectors.toSet()),
                row -> owners.put(row.getString(1), new PlantKey(row.getString(2))));
        for (PlantDraft draft : drafts) {
            PlantKey key = draft.key().orElseThrow();
            PlantKey owner = Optional.ofNullable(owners.putIfAbsent(draft.name().toString(), key))
                    .orElse(key);
            if (!owner.equals(key)) {
                throw new ImportRefused(
                        draft.place(),
                        Problem.of("plant.name.taken", draft.name().toString())
                                .with("key", key.text())
                                .with("other", owner.text()));
            }
        }
    }

    static @Nullable Object[] with(@Nullable Object[] values, Object last) {
        @Nullable Object[] more = Arrays.copyOf(values, values.length + 1);
        more[values.length] = last;
        return more;
    }
}
