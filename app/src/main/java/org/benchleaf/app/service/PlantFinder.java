package org.benchleaf.app.service;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.benchleaf.app.Refusal;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.catalog.NameBook;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.names.NameReader;
import org.benchleaf.search.index.FoldedName;
import org.benchleaf.search.names.NameHit;
import org.benchleaf.search.names.NameIndex;
import org.benchleaf.search.names.NameMatch;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.code.ItemKey;
import org.benchleaf.shared.code.PlantKey;

/// From what a person types on a command line, a key or a name, to one plant.
public final class PlantFinder {
    private static final int CANDIDATES = 6;
    /// Letters of a word that is still clear with two of them amiss.
    private static final int LONG_WORD = 7;

    private final CatalogView catalog;
    private final Supplier<NameBook> book;
    private final Supplier<NameIndex> names;

    /// @param book accepted names
    /// @param names opened only when neither a key nor an exact name is given
    public PlantFinder(CatalogView catalog, Supplier<NameBook> book, Supplier<NameIndex> names) {
        this.catalog = catalog;
        this.book = book;
        this.names = names;
    }

    /// The plant with this key or name.
    ///
    /// A name that is far from what was typed is never taken for it: the nearest are named, for the person
    /// to choose.
    ///
    /// @throws Refusal when there is none, or the name fits several
    public PlantRecord find(String text) {
        Optional<PlantKey> key = PlantKey.read(text)
                .toOptional()
                .or(() -> ItemKey.read(text).toOptional().map(ItemKey::plant));
        if (key.isPresent()) {
            return catalog.plant(key.get()).orElseThrow(() -> new Refusal(Problem.of("plant.unknown", text)));
        }
        // a name written exactly is found without opening the index
        Optional<PlantRecord> exact =
                NameReader.read(text).known().flatMap(book.get()::byName).flatMap(catalog::plant);
        if (exact.isPresent() && exact.get().name().toString().equals(text.strip())) {
            return exact.get();
        }
        List<NameHit> hits = names.get().find(text, CANDIDATES);
        if (hits.isEmpty()) {
            throw new Refusal(Problem.of("plant.unknown", text));
        }
        NameHit first = hits.getFirst();
        boolean alone = hits.size() == 1 || hits.get(1).how() != first.how();
        boolean sure = first.how().compareTo(NameMatch.COMMON_NAME) <= 0 && alone;
        boolean clear = hits.size() == 1 && isClear(text, first);
        if (!sure && !clear) {
            throw isClear(text, first) ? refusal("plant.ambiguous", text, hits) : unlike(text);
        }
        return catalog.plant(first.plant()).orElseThrow(() -> new Refusal(Problem.of("plant.unknown", text)));
    }

    /// That no plant is called so, with those that are called most alike.
    Refusal unlike(String text) {
        List<NameHit> hits = names.get().find(text, CANDIDATES);
        return hits.isEmpty() ? new Refusal(Problem.of("plant.unknown", text)) : refusal("plant.near", text, hits);
    }

    private Refusal refusal(String problem, String text, List<NameHit> hits) {
        return new Refusal(Problem.of(problem, text).with("candidates", candidates(hits)));
    }

    /// One letter off; a whole name with two letters off in a long word; or words of which one at least is in the name
    /// shown: `sweet cherry` is in the names of sweet or cherry birch, and another tree.
    private static boolean isClear(String typed, NameHit hit) {
        List<String> said = FoldedName.words(typed);
        List<String> matched = FoldedName.words(hit.matched());
        return switch (hit.how()) {
            case EXACT, FOLDED, SYNONYM, COMMON_NAME, ONE_EDIT -> true;
            case PREFIX -> said.stream().anyMatch(word -> matched.stream().anyMatch(whole -> whole.startsWith(word)));
            case TWO_EDITS ->
                said.size() == matched.size()
                        && said.stream().allMatch(word -> word.length() >= LONG_WORD || matched.contains(word));
            case SOUNDS_ALIKE -> false;
        };
    }

    /// The item's number, when the text is an item's key.
    public static Optional<ItemKey> itemKey(String text) {
        return ItemKey.read(text.toUpperCase(Locale.ROOT)).toOptional();
    }

    private String candidates(List<NameHit> hits) {
        return hits.stream()
                .map(hit -> catalog.plant(hit.plant())
                        .map(plant -> plant.name() + " (" + plant.key() + ")")
                        .orElse(hit.matched()))
                .distinct()
                .collect(Collectors.joining("; "));
    }
}
