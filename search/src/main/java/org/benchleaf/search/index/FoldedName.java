package org.benchleaf.search.index;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/// Names without what people leave out when they type: case, accents, quotes, hyphens, hybrid marks, ranks.
public final class FoldedName {
    private static final Set<String> MARKS =
            Set.of("x", "subsp", "ssp", "var", "f", "fo", "forma", "group", "gp", "cv", "tm", "r");

    private FoldedName() {}

    /// The words of a name, folded: `Viburnum plicatum f. tomentosum 'Mariesii'` gives four. A mark such as `x` counts
    /// as a word only where there is nothing else.
    public static List<String> words(String name) {
        String bare = Normalizer.normalize(name, Normalizer.Form.NFKD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("['’‘`´.]", "")
                .replaceAll("[^\\p{L}\\p{Nd}]+", " ")
                .strip();
        List<String> all = bare.isEmpty() ? List.of() : Arrays.asList(bare.split(" "));
        List<String> words = all.stream().filter(word -> !MARKS.contains(word)).toList();
        return words.isEmpty() ? List.copyOf(all) : words;
    }

    /// The words joined by single blanks.
    public static String of(String name) {
        return String.join(" ", words(name));
    }
}
