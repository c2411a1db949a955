package org.benchleaf.search.index;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/// Names without what people leave out when they type: case, accents, quotes, hyphens, hybrid marks, ranks.
public final class FoldedName {
    private static final Set<String> MARKS =
            Set.of("x", "subsp", "ssp", "var", "f", "fo", "forma", "group", "gp", "cv", "tm", "r");

    private static final Pattern ACCENTS = Pattern.compile("\\p{M}+");
    private static final Pattern LEFT_OUT = Pattern.compile("['’‘`´.]+");
    private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}\\p{Nd}]+");

    private FoldedName() {}

    /// The words of a name, folded: `Viburnum plicatum f. tomentosum 'Mariesii'` gives four. A mark such as `x`
    /// counts as a word only where there is nothing else.
    public static List<String> words(String name) {
        String plain = ACCENTS.matcher(Normalizer.normalize(name, Normalizer.Form.NFKD))
                .replaceAll("")
                .toLowerCase(Locale.ROOT);
        String bare = BETWEEN.matcher(LEFT_OUT.matcher(plain).replaceAll(""))
                .replaceAll(" ")
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
