package org.benchleaf.search.index;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/// Names without what people leave out when they type: case, accents, quotes, hyphens, hybrid marks, ranks.
public final class FoldedName {
    private static final Set<String> MARKS =
            Set.of("x", "subsp", "ssp", "var", "f", "fo", "forma", "group", "gp", "cv", "tm", "r");

    private static final int LONGEST_MARK = 5;

    private static final Pattern ACCENTS = Pattern.compile("\\p{M}+");
    /// Signs within a word that are typed or not: `O'Grady`, `St. John`.
    private static final String LEFT_OUT = "'’‘`´.";

    private FoldedName() {}

    /// The words of a name, folded: `Viburnum plicatum f. tomentosum 'Mariesii'` gives four. A mark such as `x`
    /// counts as a word only where there is nothing else.
    public static List<String> words(String name) {
        String plain = isPlain(name)
                ? name
                : ACCENTS.matcher(Normalizer.normalize(name, Normalizer.Form.NFKD))
                        .replaceAll("");
        List<String> words = new ArrayList<>();
        List<String> marks = new ArrayList<>();
        StringBuilder word = new StringBuilder();
        for (int at = 0; at < plain.length(); at++) {
            char letter = plain.charAt(at);
            if (Character.isLetterOrDigit(letter) || Character.isSurrogate(letter)) {
                word.append(Character.toLowerCase(letter));
            } else if (LEFT_OUT.indexOf(letter) < 0) {
                take(word, words, marks);
            }
        }
        take(word, words, marks);
        return words.isEmpty() ? marks : words;
    }

    private static void take(StringBuilder letters, List<String> words, List<String> marks) {
        if (!letters.isEmpty()) {
            String word = letters.toString();
            (letters.length() <= LONGEST_MARK && MARKS.contains(word) ? marks : words).add(word);
            letters.setLength(0);
        }
    }

    private static boolean isPlain(String name) {
        for (int at = 0; at < name.length(); at++) {
            if (name.charAt(at) > 0x7f) {
                return false;
            }
        }
        return true;
    }

    /// The words joined by single blanks.
    public static String of(String name) {
        return String.join(" ", words(name));
    }
}
