package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.benchleaf.catalog.ImportRefused;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.catalog.intake.LotDraft;
import org.benchleaf.catalog.intake.PlantDraft;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.name.BotanicalName;

/// Says which plant each row of a plan means: the one with its key, else the one with exactly its accepted name,
/// else a
/// new one. Rows with a key go first, for they may rename; synonyms are the planner's business.
final class PlantResolver {
    private static final String BY_KEY = "SELECT * FROM plant WHERE plant_key IN (<keys>)";
    private static final String BY_NAME = "SELECT * FROM plant WHERE name IN (<keys>)";

    private final Map<PlantKey, PlantEdit> byKey = new HashMap<>();
    private final Map<String, PlantEdit> byName = new HashMap<>();
    private final Set<PlantKey> keysOfPlan = new HashSet<>();
    private final Session session;
    private final Set<PlantKey> keysTaken = new HashSet<>();
    private int nextSerial;
    private int checkedUpTo;

    PlantResolver(Session session, ImportPlan plan) throws SQLException {
        this.session = session;
        Set<String> names = new HashSet<>();
        for (PlantDraft draft : plan.plants()) {
            names.add(draft.name().toString());
            draft.key().ifPresent(keysOfPlan::add);
        }
        for (LotDraft draft : plan.lots()) {
            names.add(draft.name().toString());
            draft.plant().ifPresent(keysOfPlan::add);
        }
        load(BY_KEY, keysOfPlan);
        load(BY_NAME, names);
        nextSerial = (int) session.number("SELECT COALESCE(MAX(serial) + 1, 0) FROM plant");
    }

    private void load(String query, Collection<?> wanted) throws SQLException {
        Rows.forEach(session, query, wanted, row -> {
            BotanicalName name = NameColumns.read(row);
            PlantKey key = new PlantKey(row.getString("plant_key"));
            if (!byKey.containsKey(key)) {
                byKey.put(
                        key,
                        new PlantEdit(
                                row.getInt("serial"), key, Optional.of(name), name, row.getInt("withdrawn") == 1));
            }
        });
    }

    /// The plants of the plan's rows, by serial.
    ///
    /// @throws ImportRefused when a row gives a plant the name of another one
    Map<Integer, PlantEdit> resolve(List<PlantDraft> drafts) throws SQLException {
        Map<Integer, PlantEdit> edits = new TreeMap<>();
        for (PlantDraft draft : drafts) {
            if (draft.key().isPresent()) {
                PlantEdit edit = named(draft.key().get(), draft.name());
                edits.put(edit.serial, edit);
            }
        }
        refuseSharedNames(drafts);
        for (PlantDraft draft : drafts) {
            Optional<PlantEdit> known = find(draft.key(), draft.name());
            PlantEdit edit = known.isPresent() ? known.get() : create(draft.name());
            edit.drafts.add(draft);
            edits.put(edit.serial, edit);
        }
        return edits;
    }

    /// The plant with a key, or where none is given with exactly this name; those of the plan included.
    Optional<PlantEdit> find(Optional<PlantKey> key, BotanicalName name) {
        return Optional.ofNullable(key.isPresent() ? byKey.get(key.get()) : byName.get(name.toString()));
    }

    private PlantEdit named(PlantKey key, BotanicalName name) {
        PlantEdit edit =
                byKey.computeIfAbsent(key, given -> new PlantEdit(nextSerial++, given, Optional.empty(), name, false));
        edit.name = name;
        return edit;
    }

    private void refuseSharedNames(List<PlantDraft> drafts) {
        byName.clear(); // two plants may have changed names with each other
        for (PlantEdit edit : byKey.values()) {
            PlantEdit other = byName.put(edit.name.toString(), edit);
            if (other != null) {
                Problem problem = Problem.of("plant.name.taken", edit.name.toString())
                        .with("key", edit.key.text())
                        .with("other", other.key.text());
                throw drafts.stream()
                        .filter(draft -> draft.name().equals(edit.name))
                        .filter(draft -> draft.key().isPresent())
                        .reduce((first, second) -> second)
                        .map(draft -> new ImportRefused(draft.place(), problem))
                        .orElseGet(() -> new ImportRefused(problem));
            }
        }
    }

    private PlantEdit create(BotanicalName name) throws SQLException {
        while (true) {
            int serial = nextSerial++;
            PlantKey key = PlantKey.ofSerial(serial);
            if (serial >= checkedUpTo) {
                checkKeysFrom(serial);
            }
            if (!keysTaken.contains(key) && !keysOfPlan.contains(key)) {
                PlantEdit edit = new PlantEdit(serial, key, Optional.empty(), name, false);
                byKey.put(key, edit);
                byName.put(name.toString(), edit);
                return edit;
            }
        }
    }

    /// A key that a spreadsheet brought along may be one that our own row of keys comes to later.
    private void checkKeysFrom(int serial) throws SQLException {
        checkedUpTo = serial + Rows.MOST;
        List<PlantKey> coming = IntStream.range(serial, checkedUpTo)
                .mapToObj(PlantKey::ofSerial)
                .toList();
        Rows.forEach(session, BY_KEY, coming, row -> keysTaken.add(new PlantKey(row.getString("plant_key"))));
    }
}
