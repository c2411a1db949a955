package org.benchleaf.catalog.store;

import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/// The common names and synonyms of one plant, and what an import makes of them.
///
/// Common names of a language replace those that files of the same rank gave before; synonyms replace those of
/// the same source. A list that is left empty says nothing and replaces nothing.
final class NameShelf {
    static final String COMMON = "common";
    static final String SYNONYM = "synonym";
    /// Botanical names have no language but Latin.
    static final String LATIN = "la";

    /// What makes a row one of its own.
    record Id(String kind, String language, String text, int source) {}

    /// @param rank 0 a reference work, 1 the shop's own
    /// @param place the most usual first, from 0
    record Row(int rank, int place) {}

    private final Map<Id, Row> now = new LinkedHashMap<>();
    private final Map<Id, Row> before = new LinkedHashMap<>();

    /// Puts a row as it is stored.
    void put(Id id, Row row) {
        now.put(id, row);
        before.put(id, row);
    }

    /// A row as it is stored; empty when there was none.
    Optional<Row> before(Id id) {
        return Optional.ofNullable(before.get(id));
    }

    /// How many rows there are now.
    int size() {
        return now.size();
    }

    /// @param source who is written beside a name that is new; one that is there keeps its own
    void stateCommon(String language, List<String> texts, int rank, int source) {
        if (shown(language).equals(texts.stream().distinct().toList())) {
            return; // whoever gave them, they are known in this order
        }
        Map<String, Integer> sourceBefore = new LinkedHashMap<>();
        now.entrySet().removeIf(entry -> {
            Id id = entry.getKey();
            boolean replaced = id.kind().equals(COMMON)
                    && id.language().equals(language)
                    && entry.getValue().rank() == rank;
            if (replaced) {
                sourceBefore.putIfAbsent(id.text(), id.source());
            }
            return replaced;
        });
        int place = 0;
        for (String text : new LinkedHashSet<>(texts)) {
            Id id = new Id(COMMON, language, text, sourceBefore.getOrDefault(text, source));
            now.put(id, new Row(rank, place++));
        }
    }

    /// The names of a language as readers see them: those of the highest rank first.
    private List<String> shown(String language) {
        Set<String> seen = new HashSet<>();
        return now.entrySet().stream()
                .filter(entry -> entry.getKey().kind().equals(COMMON)
                        && entry.getKey().language().equals(language))
                .sorted(Comparator.<Map.Entry<Id, Row>>comparingInt(
                                entry -> -entry.getValue().rank())
                        .thenComparingInt(entry -> entry.getValue().place())
                        .thenComparing(entry -> entry.getKey().text())
                        .thenComparingInt(entry -> entry.getKey().source()))
                .map(entry -> entry.getKey().text())
                .filter(text -> seen.add(text.toLowerCase(Locale.ROOT)))
                .toList();
    }

    void stateSynonyms(int source, List<String> texts, int rank) {
        List<String> known = now.entrySet().stream()
                .filter(entry ->
                        entry.getKey().kind().equals(SYNONYM) && entry.getKey().source() == source)
                .sorted(Comparator.comparingInt(entry -> entry.getValue().place()))
                .map(entry -> entry.getKey().text())
                .toList();
        if (known.equals(texts.stream().distinct().toList())) {
            return;
        }
        now.keySet().removeIf(id -> id.kind().equals(SYNONYM) && id.source() == source);
        int place = 0;
        for (String text : new LinkedHashSet<>(texts)) {
            now.put(new Id(SYNONYM, LATIN, text, source), new Row(rank, place++));
        }
    }

    /// Keeps a name that the plant had in this catalog: whoever wrote it down must still find the plant.
    void keepFormer(String name, int source) {
        now.putIfAbsent(new Id(SYNONYM, LATIN, name, source), new Row(0, 0));
    }

    /// An accepted name is no synonym of itself.
    void dropSynonym(String accepted) {
        now.keySet().removeIf(id -> id.kind().equals(SYNONYM) && id.text().equals(accepted));
    }

    Set<Id> removed() {
        Set<Id> removed = new HashSet<>(before.keySet());
        removed.removeAll(now.keySet());
        return removed;
    }

    /// The rows that are new or different.
    Map<Id, Row> changed() {
        Map<Id, Row> changed = new LinkedHashMap<>(now);
        changed.entrySet().removeAll(before.entrySet());
        return changed;
    }
}
