package org.benchleaf.catalog.names;

import java.util.Locale;
import java.util.Set;

/// Capital letters put right: names typed in capitals, trade designations written in them.
final class Capitals {
    /// Words that stay small inside an epithet (ICNCP Art. 21.3 lets usage of the language decide).
    private static final Set<String> SMALL = Set.of(
            "a", "am", "an", "and", "auf", "aux", "da", "de", "dem", "den", "der", "des", "di", "du", "et", "im", "in",
            "la", "le", "les", "no", "of", "on", "the", "to", "und", "van", "von", "y", "zu");

    private Capitals() {}

    /// Whether all letters are capitals, and there are two or more.
    static boolean only(String text) {
        return text.codePoints().filter(Character::isLetter).count() >= 2
                && text.codePoints().noneMatch(c -> Character.isLowerCase(c));
    }

    static boolean starts(String word) {
        return !word.isEmpty() && Character.isUpperCase(word.codePointAt(0));
    }

    /// `LUDWIG SPAETH` to `Ludwig Spaeth`, `QUEEN OF THE NIGHT` to `Queen of the Night`.
    static String titled(String text) {
        StringBuilder titled = new StringBuilder();
        for (String word : text.toLowerCase(Locale.ROOT).split(" ")) {
            boolean small = !titled.isEmpty() && SMALL.contains(word);
            titled.append(titled.isEmpty() ? "" : " ").append(small ? word : capitalised(word));
        }
        return titled.toString();
    }

    /// Capitals at the start and after hyphens, not after apostrophes.
    static String capitalised(String word) {
        StringBuilder capitalised = new StringBuilder();
        boolean first = true;
        for (int c : word.codePoints().toArray()) {
            capitalised.appendCodePoint(first && Character.isLetter(c) ? Character.toTitleCase(c) : c);
            first = first && !Character.isLetterOrDigit(c) || c == '-';
        }
        return capitalised.toString();
    }
}
