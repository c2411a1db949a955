package org.benchleaf.catalog.store;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// What all sources state of one plant, and which is chosen: the highest rank, of equals the newest.
///
/// An import replaces what its own sources stated before and leaves the others' facts; the shelf knows afterwards
/// which
/// rows are different.
final class FactShelf {
    /// What one source states of one attribute.
    ///
    /// @param value in stored form
    /// @param rank 0 a reference work, 1 the shop's own
    /// @param entered the revision that stated it
    /// @param chosen whether it is the one shown
    record Row(String value, int rank, long entered, boolean chosen) {
        private Row chosen(boolean nowChosen) {
            return new Row(value, rank, entered, nowChosen);
        }

        private int compareStanding(Row other) {
            return rank != other.rank ? Integer.compare(rank, other.rank) : Long.compare(entered, other.entered);
        }
    }

    /// A row that must be written.
    record Changed(String attribute, int source, Row row) {}

    private record Place(String attribute, int source) {}

    private final Map<String, Map<Integer, Row>> byAttribute = new HashMap<>();
    private final Map<Place, Row> before = new HashMap<>();

    /// Puts a row as it is stored.
    void put(String attribute, int source, Row row) {
        byAttribute.computeIfAbsent(attribute, id -> new HashMap<>()).put(source, row);
        before.put(new Place(attribute, source), row);
    }

    /// A row as it is stored; empty when there was none.
    Optional<Row> before(String attribute, int source) {
        return Optional.ofNullable(before.get(new Place(attribute, source)));
    }

    /// A source states a value; saying the same again is nothing new.
    void state(String attribute, int source, String value, int rank, long revision) {
        Map<Integer, Row> rows = byAttribute.computeIfAbsent(attribute, id -> new HashMap<>());
        Row old = rows.get(source);
        if (old != null && old.value().equals(value) && old.rank() == rank) {
            return;
        }
        boolean shown = old != null && old.chosen();
        rows.put(source, new Row(value, rank, revision, shown));
        choose(rows, source);
    }

    /// Of equal standing the one stated last is chosen, so that of two rows in one file the later one counts; failing
    /// that the choice stays as it was.
    private static void choose(Map<Integer, Row> rows, int statedLast) {
        Comparator<Map.Entry<Integer, Row>> order = Map.Entry.<Integer, Row>comparingByValue(Row::compareStanding)
                .thenComparing(entry -> entry.getKey() == statedLast)
                .thenComparing(entry -> entry.getValue().chosen());
        int chosen = rows.entrySet().stream().max(order).map(Map.Entry::getKey).orElse(statedLast);
        rows.replaceAll((source, row) -> row.chosen(source == chosen));
    }

    /// The rows that are new or different.
    List<Changed> changed() {
        List<Changed> changed = new ArrayList<>();
        byAttribute.forEach((attribute, rows) -> rows.forEach((source, row) -> {
            if (!row.equals(before.get(new Place(attribute, source)))) {
                changed.add(new Changed(attribute, source, row));
            }
        }));
        return changed;
    }
}
