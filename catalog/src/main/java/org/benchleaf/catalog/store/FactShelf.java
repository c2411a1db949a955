package org.benchleaf.catalog.store;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// What all sources state of one plant, and which is chosen: the shop's own word, then the source that
/// the shop named before others, then the newest.
///
/// An import replaces what its own sources stated before and leaves the others' facts; the shelf knows
/// afterwards which rows are different.
final class FactShelf {
    /// No source has this number.
    private static final int NOBODY = -1;

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
    }

    /// A row that must be written.
    record Changed(String attribute, int source, Row row) {}

    private record Place(String attribute, int source) {}

    private final Map<Integer, Integer> weights;
    private final Map<String, Map<Integer, Row>> byAttribute = new HashMap<>();
    private final Map<Place, Row> before = new HashMap<>();

    /// @param weights how much the shop believes each source; see [SourcePreference#weight]
    FactShelf(Map<Integer, Integer> weights) {
        this.weights = weights;
    }

    /// Puts a row as it is stored.
    void put(String attribute, int source, Row row) {
        byAttribute.computeIfAbsent(attribute, id -> new HashMap<>()).put(source, row);
        before.put(new Place(attribute, source), row);
    }

    /// A row as it is stored; empty when there was none.
    Optional<Row> before(String attribute, int source) {
        return Optional.ofNullable(before.get(new Place(attribute, source)));
    }

    /// A source states a value; saying the same again is nothing new, in a file of another rank either:
    /// so a list that was written out from here changes nothing when it comes back.
    void state(String attribute, int source, String value, int rank, long revision) {
        Map<Integer, Row> rows = byAttribute.computeIfAbsent(attribute, id -> new HashMap<>());
        Row old = rows.get(source);
        if (old != null && old.value().equals(value)) {
            return;
        }
        boolean shown = old != null && old.chosen();
        rows.put(source, new Row(value, rank, revision, shown));
        choose(rows, source);
    }

    /// Of equal standing the one stated last is chosen, so that of two rows in one file the later one counts;
    /// failing that the choice stays as it was.
    private void choose(Map<Integer, Row> rows, int statedLast) {
        Comparator<Map.Entry<Integer, Row>> order = Comparator.<Map.Entry<Integer, Row>>comparingInt(
                        entry -> entry.getValue().rank())
                .thenComparingInt(entry -> weights.getOrDefault(entry.getKey(), 0))
                .thenComparingLong(entry -> entry.getValue().entered())
                .thenComparing(entry -> entry.getKey() == statedLast)
                .thenComparing(entry -> entry.getValue().chosen());
        int chosen = rows.entrySet().stream().max(order).map(Map.Entry::getKey).orElse(statedLast);
        rows.replaceAll((source, row) -> row.chosen(source == chosen));
    }

    /// Chooses by what the shop believes now; where that says nothing the choice stays as it is.
    void chooseAgain() {
        byAttribute.values().forEach(rows -> choose(rows, NOBODY));
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
