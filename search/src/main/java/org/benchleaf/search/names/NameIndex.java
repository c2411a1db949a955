package org.benchleaf.search.names;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import org.benchleaf.search.index.FoldedName;
import org.benchleaf.search.index.Named;
import org.benchleaf.search.index.PlantIndex;
import org.benchleaf.search.index.SaidNames;
import org.benchleaf.search.index.WrittenName;
import org.benchleaf.shared.code.PlantKey;

/// Looks plants up by name, rung by rung from the surest way of matching to the least sure. Safe for many
/// threads.
///
/// What is misspelt or misheard is looked for only when no whole name was hit.
public final class NameIndex {
    /// So many plants with like names are compared letter by letter and sound by sound before the best
    /// are kept.
    private static final int CANDIDATES = 64;
    /// No name has more words; what follows is not looked at.
    private static final int MOST_WORDS = 12;

    /// With one letter amiss in so many, a misspelling is clear and nothing that sounds alike is looked for.
    private static final int LETTERS_AN_EDIT = 6;

    private static final int LONGEST_WORD = 48;
    /// A beginning of fewer letters may be that of any word.
    private static final int SHORTEST_BEGINNING = 3;

    private final PlantIndex index;

    public NameIndex(PlantIndex index) {
        this.index = index;
    }

    /// The plants whose names match what was typed or said, the surest first.
    ///
    /// @param typed a name or the beginning of one, in any case, with or without marks
    /// @param limit how many at most, 1 to 1000
    public List<NameHit> find(String typed, int limit) {
        AsRead read = AsRead.of(typed);
        List<String> words = words(read.typed());
        if (words.isEmpty()) {
            return List.of();
        }
        Hits hits = new Hits(limit);
        wholeNames(hits, typed.strip(), String.join(" ", words));
        for (int way = 0; hits.isEmpty() && way < read.shorter().size(); way++) {
            wholeNames(hits, typed.strip(), read.shorter().get(way));
        }
        boolean sure = !hits.isEmpty();
        begunNames(hits, words);
        if (hits.isEmpty() && words.stream().allMatch(word -> word.length() >= SHORTEST_BEGINNING)) {
            hits.add(
                    byWholeWords(index.withWordsBegun(words, CANDIDATES), words),
                    NameMatch.PREFIX,
                    NameIndex::accepted);
        }
        if (!sure && !hits.isFull()) {
            likeNames(hits, words);
        }
        return hits.list();
    }

    /// The plants whose names begin as typed so far, whole names first; never a misspelt one.
    ///
    /// @param limit how many at most, 1 to 1000
    public List<NameHit> complete(String typed, int limit) {
        List<String> words = words(typed);
        if (words.isEmpty()) {
            return List.of();
        }
        Hits hits = new Hits(limit);
        wholeNames(hits, typed.strip(), String.join(" ", words));
        begunNames(hits, words);
        return hits.list();
    }

    private static List<String> words(String typed) {
        return FoldedName.words(typed).stream()
                .limit(MOST_WORDS)
                .map(word -> word.length() > LONGEST_WORD ? word.substring(0, LONGEST_WORD) : word)
                .toList();
    }

    private void wholeNames(Hits hits, String typed, String folded) {
        List<Named> accepted = index.named(WrittenName.Kind.ACCEPTED, folded, hits.limit());
        List<Named> exact =
                accepted.stream().filter(named -> accepted(named).equals(typed)).toList();
        hits.add(exact, NameMatch.EXACT, NameIndex::accepted);
        hits.add(accepted, NameMatch.FOLDED, NameIndex::accepted);
        whole(hits, WrittenName.Kind.SYNONYM, folded, NameMatch.SYNONYM);
        whole(hits, WrittenName.Kind.COMMON, folded, NameMatch.COMMON_NAME);
    }

    private void whole(Hits hits, WrittenName.Kind kind, String folded, NameMatch how) {
        hits.add(
                index.named(kind, folded, hits.limit()), how, named -> first(named, kind, name -> name.equals(folded)));
    }

    private void begunNames(Hits hits, List<String> words) {
        String folded = String.join(" ", words);
        for (WrittenName.Kind kind : WrittenName.Kind.values()) {
            if (!hits.isFull()) {
                List<Named> begun = index.beginning(kind, folded, hits.limit());
                if (kind == WrittenName.Kind.COMMON && hits.isEmpty() && !begun.isEmpty()) {
                    kinds(hits, words, folded);
                }
                hits.add(begun, NameMatch.PREFIX, named -> first(named, kind, name -> name.startsWith(folded)));
            }
        }
        if (!hits.isFull()) {
            hits.add(index.withWords(words, hits.limit()), NameMatch.PREFIX, named -> Spelling.holding(words, named));
        }
    }

    /// A white oak is an oak; an oak sedge only begins so.
    private void kinds(Hits hits, List<String> words, String folded) {
        Predicate<String> ends = name -> name.endsWith(" " + folded);
        hits.add(
                index.withWords(words, CANDIDATES).stream()
                        .filter(named -> named.names().stream()
                                .anyMatch(name -> name.kind() == WrittenName.Kind.COMMON
                                        && ends.test(FoldedName.of(name.text()))))
                        .toList(),
                NameMatch.PREFIX,
                named -> first(named, WrittenName.Kind.COMMON, ends));
    }

    private void likeNames(Hits hits, List<String> words) {
        Likeness likeness = new Likeness(words);
        SaidNames said = new SaidNames(words);
        List<Likeness.Guess> spelt = guesses(likeness, index.spelt(said, CANDIDATES), NameMatch.TWO_EDITS);
        add(hits, likeness, spelt);
        int letters = words.stream().mapToInt(String::length).sum();
        boolean clear = !spelt.isEmpty() && spelt.getFirst().cost() * LETTERS_AN_EDIT <= letters;
        if (!clear && !hits.isFull()) {
            add(hits, likeness, guesses(likeness, index.like(said, CANDIDATES), NameMatch.SOUNDS_ALIKE));
        }
    }

    /// Those whose accepted names hold most of the words as they stand come first.
    private static List<Named> byWholeWords(List<Named> begun, List<String> words) {
        return begun.stream()
                .sorted(Comparator.comparing(named -> -words.stream()
                        .filter(FoldedName.words(accepted(named))::contains)
                        .count()))
                .toList();
    }

    private static List<Likeness.Guess> guesses(Likeness likeness, List<Named> candidates, NameMatch least) {
        return genusByGenus(candidates.stream()
                .flatMap(named -> likeness.of(named, least).stream())
                .sorted(Comparator.comparing(Likeness.Guess::how)
                        .thenComparing(Likeness.Guess::cost)
                        .thenComparing(Likeness.Guess::unlike)
                        .thenComparing(Likeness.Guess::unsaid)
                        .thenComparing(guess -> guess.named().order())
                        .thenComparing(guess -> guess.named().plant()))
                .toList());
    }

    /// Of guesses that are as many letters off, the nearest of each genus comes before the other plants of the
    /// first: whoever meant the second genus still sees it in a short list.
    private static List<Likeness.Guess> genusByGenus(List<Likeness.Guess> sorted) {
        List<Likeness.Guess> all = new ArrayList<>(sorted.size());
        List<Likeness.Guess> later = new ArrayList<>();
        Set<String> genera = new HashSet<>();
        for (int at = 0; at < sorted.size(); at++) {
            Likeness.Guess guess = sorted.get(at);
            (genera.add(genus(guess.named())) ? all : later).add(guess);
            boolean last = at + 1 == sorted.size() || !guess.isAsFarAs(sorted.get(at + 1));
            if (last) {
                all.addAll(later);
                later.clear();
                genera.clear();
            }
        }
        return all;
    }

    private static String genus(Named named) {
        return FoldedName.words(accepted(named)).stream().findFirst().orElse("");
    }

    private static void add(Hits hits, Likeness likeness, List<Likeness.Guess> guesses) {
        guesses.stream()
                .limit(hits.limit() * 2L)
                .forEach(guess ->
                        hits.add(List.of(guess.named()), guess.how(), named -> likeness.nearest(named, guess.how())));
    }

    private static String accepted(Named named) {
        return named.names().stream()
                .min(Comparator.comparing(WrittenName::kind))
                .map(WrittenName::text)
                .orElse(named.order());
    }

    private static String first(Named named, WrittenName.Kind kind, Predicate<String> folded) {
        return named.names().stream()
                .filter(name -> name.kind() == kind && folded.test(FoldedName.of(name.text())))
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
