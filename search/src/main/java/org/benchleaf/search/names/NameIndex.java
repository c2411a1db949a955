package org.benchleaf.search.names;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.benchleaf.search.index.FoldedName;
import org.benchleaf.search.index.Named;
import org.benchleaf.search.index.PlantIndex;
import org.benchleaf.search.index.WrittenName;
import org.benchleaf.shared.code.PlantKey;

/// Looks plants up by name, rung by rung from the surest way of matching to the least sure. Safe for many threads.
///
/// Misspellings are looked for only when no whole name was hit; what sounds alike will be one rung more, the last.
public final class NameIndex {
    /// So many misspelt candidates are compared letter by letter before the best are kept.
    private static final int CANDIDATES = 200;

    private final PlantIndex index;

    public NameIndex(PlantIndex index) {
        this.index = index;
    }

    /// The plants whose names match what was typed, the surest first; equally sure ones by name.
    ///
    /// @param typed a name or the beginning of one, in any case, with or without marks
    /// @param limit how many at most, 1 to 1000
    public List<NameHit> find(String typed, int limit) {
        List<String> words = FoldedName.words(typed);
        if (words.isEmpty()) {
            return List.of();
        }
        Hits hits = new Hits(limit);
        wholeNames(hits, typed.strip(), String.join(" ", words));
        boolean sure = !hits.isEmpty();
        if (!hits.isFull()) {
            hits.add(index.withWords(words, limit), NameMatch.PREFIX, named -> Spelling.holding(words, named));
        }
        for (int edits = 1; edits <= 2 && !sure && !hits.isFull(); edits++) {
            misspelt(hits, words, edits);
        }
        return hits.list();
    }

    private void wholeNames(Hits hits, String typed, String folded) {
        List<Named> accepted = index.named(WrittenName.Kind.ACCEPTED, folded, CANDIDATES);
        List<Named> exact =
                accepted.stream().filter(named -> accepted(named).equals(typed)).toList();
        hits.add(exact, NameMatch.EXACT, NameIndex::accepted);
        hits.add(accepted, NameMatch.FOLDED, NameIndex::accepted);
        hits.add(
                index.named(WrittenName.Kind.SYNONYM, folded, hits.limit()),
                NameMatch.SYNONYM,
                named -> whole(named, WrittenName.Kind.SYNONYM, folded));
        hits.add(
                index.named(WrittenName.Kind.COMMON, folded, hits.limit()),
                NameMatch.COMMON_NAME,
                named -> whole(named, WrittenName.Kind.COMMON, folded));
    }

    private void misspelt(Hits hits, List<String> words, int edits) {
        Map<Named, Integer> distances = new LinkedHashMap<>();
        for (List<String> spelling : Spelling.joined(words)) {
            for (Named named : index.withWordsLike(spelling, edits, CANDIDATES)) {
                distances.merge(named, Spelling.distance(spelling, named), Math::min);
            }
        }
        List<Named> nearest = distances.entrySet().stream()
                .sorted(Map.Entry.<Named, Integer>comparingByValue()
                        .thenComparing(entry -> entry.getKey().order())
                        .thenComparing(entry -> entry.getKey().plant()))
                .map(Map.Entry::getKey)
                .toList();
        hits.add(
                nearest,
                edits == 1 ? NameMatch.ONE_EDIT : NameMatch.TWO_EDITS,
                named -> Spelling.nearest(words, named));
    }

    private static String accepted(Named named) {
        return named.names().stream()
                .min(Comparator.comparing(WrittenName::kind))
                .map(WrittenName::text)
                .orElse(named.order());
    }

    private static String whole(Named named, WrittenName.Kind kind, String folded) {
        return named.names().stream()
                .filter(name ->
                        name.kind() == kind && FoldedName.of(name.text()).equals(folded))
                .map(WrittenName::text)
                .findFirst()
                .orElseGet(() -> accepted(named));
    }

    /// The hits so far; a plant stays where it was found first.
    private static final class Hits {
        private final Map<PlantKey, NameHit> byPlant = new LinkedHashMap<>();
        private final int limit;

        Hits(int limit) {
            this.limit = limit;
        }

        void add(List<Named> found, NameMatch how, Function<Named, String> matched) {
            for (Named named : found) {
                if (!isFull() && !byPlant.containsKey(named.plant())) {
                    byPlant.put(named.plant(), new NameHit(named.plant(), matched.apply(named), how));
                }
            }
        }

        int limit() {
            return limit;
        }

        boolean isEmpty() {
            return byPlant.isEmpty();
        }

        boolean isFull() {
            return byPlant.size() >= limit;
        }

        List<NameHit> list() {
            return new ArrayList<>(byPlant.values());
        }
    }
}
