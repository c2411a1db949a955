package org.benchleaf.catalog.rules;

import java.text.Normalizer;
import java.util.Locale;

/// Names made alike where lists of law spell them differently.
final class NameStem {
    private NameStem() {}

    /// Lower case letters and digits alone, without accents.
    static String fold(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{Nd}]", "");
    }

    /// An epithet without what varies: gender (alatus, alata, alatum) and the endings of personal names (thunbergii,
    /// thunbergi, thunbergia, misprinted so in some lists).
    ///
    /// Two species of one genus that differ in nothing else are not known to us; a match by stem is told as such.
    static String stem(String epithet) {
        String folded = fold(epithet);
        String bare = folded.replaceFirst("(?:iae|ii|ia|i|us|um|a|is|e|er|ris|re)$", "");
        return bare.length() < 3 ? folded : bare;
    }
}
