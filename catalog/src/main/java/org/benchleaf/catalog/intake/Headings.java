package org.benchleaf.catalog.intake;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/// Compares headings as people do: case, blanks, hyphens and underscores do not matter.
final class Headings {
    private Headings() {}

    static String folded(String heading) {
        return heading.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_\\-]+", "_");
    }

    /// The known heading that looks most like an unknown one; empty when none is near.
    static Optional<String> nearest(String heading, Collection<String> known) {
        String wanted = folded(heading);
        int most = Math.max(1, wanted.length() / 3);
        return known.stream()
                .filter(candidate -> distance(wanted, folded(candidate)) <= most)
                .min(Comparator.<String>comparingInt(candidate -> distance(wanted, folded(candidate)))
                        .thenComparing(Comparator.naturalOrder()));
    }

    /// How many letters must be changed, added or dropped (Levenshtein 1966).
    static int distance(String one, String other) {
        int[] before = new int[other.length() + 1];
        for (int at = 0; at <= other.length(); at++) {
            before[at] = at;
        }
        for (int row = 1; row <= one.length(); row++) {
            int[] now = new int[other.length() + 1];
            now[0] = row;
            for (int at = 1; at <= other.length(); at++) {
                int change = one.charAt(row - 1) == other.charAt(at - 1) ? 0 : 1;
                now[at] = Math.min(before[at - 1] + change, 1 + Math.min(before[at], now[at - 1]));
            }
            before = now;
        }
        return before[other.length()];
    }
}
