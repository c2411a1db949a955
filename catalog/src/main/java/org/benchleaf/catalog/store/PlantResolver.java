package org.benchleaf.catalog.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.benchleaf.catalog.intake.LotDraft;
import org.benchleaf.catalog.intake.PlantDraft;
import org.benchleaf.catalog.store.PlantEdit.Standing;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.name.BotanicalName;

/// Says which plant each row of a plan means: the one with its key, else the one with exactly its
/// accepted name, else a new one. Names given by key are given already; synonyms are the planner's
/// business.
final class PlantResolver {
    private static final String BY_KEY = "SELECT * FROM plant WHERE plant_key IN (<keys>)";
    private static final String BY_NAME = "SELECT * FROM plant WHERE name IN (<keys>)";
    private static final String SERIAL_BY_KEY =
            "SELECT plant_key, serial FROM plant WHERE withdrawn = 0 AND plant_key IN (<keys>)";
    private static final String SERIAL_BY_NAME =
            "SELECT name, serial FROM plant WHERE withdrawn = 0 AND name IN (<keys>)";

    private final Session session;
    private final PlantNaming naming;
    private final Set<PlantKey> keysTaken = new HashSet<>();
    private int nextSerial;
    private int checkedUpTo;

    PlantResolver(Session session, PlantNaming naming) {
        this.session = session;
        this.naming = naming;
        this.nextSerial = naming.nextSerial();
    }

    /// The plants that some rows mean, by serial; new ones are to be written before the next rows are
    /// asked about.
    Map<Integer, PlantEdit> resolve(List<PlantDraft> drafts) throws SQLException {
        Map<PlantKey, PlantEdit> byKey = new HashMap<>();
        Map<String, PlantEdit> byName = new HashMap<>();
        Set<Object> keys = new HashSet<>();
        Set<Object> names = new HashSet<>();
        for (PlantDraft draft : drafts) {
            if (draft.key().isPresent()) {
                keys.add(draft.key().get());
            } else {
                names.add(draft.name().toString());
            }
        }
        for (Map.Entry<String, Set<Object>> query :
                Map.of(BY_KEY, keys, BY_NAME, names).entrySet()) {
            Rows.forEach(session, query.getKey(), query.getValue(), row -> {
                PlantEdit edit = edit(row);
                PlantEdit same = byKey.putIfAbsent(edit.key, edit);
                byName.put(edit.name.toString(), same == null ? edit : same);
            });
        }
        Map<Integer, PlantEdit> edits = new TreeMap<>();
        for (PlantDraft draft : drafts) {
            PlantEdit edit = draft.key().isPresent()
                    ? Optional.ofNullable(byKey.get(draft.key().get())).orElseThrow()
                    : known(byName, draft.name());
            edit.drafts.add(draft);
            edits.put(edit.serial, edit);
        }
        return edits;
    }

    private PlantEdit known(Map<String, PlantEdit> byName, BotanicalName name) throws SQLException {
        PlantEdit known = byName.get(name.toString());
        if (known == null) {
            known = create(name);
            byName.put(name.toString(), known);
        }
        return known;
    }

    private PlantEdit edit(ResultSet row) throws SQLException {
        int serial = row.getInt("serial");
        boolean made = naming.made().get(serial);
        naming.made().clear(serial); // rows that come later find it known
        Standing standing = row.getInt("withdrawn") == 1 ? Standing.WITHDRAWN : made ? Standing.MADE : Standing.KNOWN;
        return new PlantEdit(
                serial,
                new PlantKey(row.getString("plant_key")),
                NameColumns.read(row),
                standing,
                Optional.ofNullable(naming.formerNames().remove(serial)));
    }

    private PlantEdit create(BotanicalName name) throws SQLException {
        while (true) {
            int serial = nextSerial++;
            PlantKey key = PlantKey.ofSerial(serial);
            if (serial >= checkedUpTo) {
                checkKeysFrom(serial);
            }
            if (!keysTaken.contains(key)) {
                return new PlantEdit(serial, key, name, Standing.NEW, Optional.empty());
            }
        }
    }

    /// A key that a spreadsheet brought along may be one that our own row of keys comes to later.
    private void checkKeysFrom(int serial) throws SQLException {
        checkedUpTo = serial + Rows.MOST;
        keysTaken.clear();
        List<PlantKey> coming = IntStream.range(serial, checkedUpTo)
                .mapToObj(PlantKey::ofSerial)
                .toList();
        Rows.forEach(session, BY_KEY, coming, row -> keysTaken.add(new PlantKey(row.getString("plant_key"))));
    }

    /// The serials of the plants that rows of stock mean, by key and by plain name.
    Map<String, Integer> serials(Collection<LotDraft> drafts) throws SQLException {
        Map<String, Integer> serials = new HashMap<>();
        Set<PlantKey> keys =
                drafts.stream().flatMap(draft -> draft.plant().stream()).collect(Collectors.toSet());
        Set<String> names =
                drafts.stream().map(draft -> draft.name().toString()).collect(Collectors.toSet());
        Rows.forEach(session, SERIAL_BY_KEY, keys, row -> serials.put(row.getString(1), row.getInt(2)));
        Rows.forEach(session, SERIAL_BY_NAME, names, row -> serials.put(row.getString(1), row.getInt(2)));
        return serials;
    }
}
