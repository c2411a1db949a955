package org.benchleaf.search.names;

import java.util.Comparator;
import java.util.List;
import org.benchleaf.search.index.FoldedName;
import org.benchleaf.search.index.Named;

/// How far words typed are from the words of a name, in letters.
final class Spelling {
    private Spelling() {}

    /// The name that holds all the words, the last one perhaps unfinished; the first name when only several
    /// together do.
    static String holding(List<String> words, Named named) {
        return named.names().stream()
                .filter(name -> holds(FoldedName.words(name.text()), words))
                .findFirst()
                .orElse(named.names().getFirst())
                .text();
    }

    private static boolean holds(List<String> name, List<String> words) {
        String last = words.getLast();
        return name.containsAll(words.subList(0, words.size() - 1))
                && name.stream().anyMatch(word -> word.startsWith(last));
    }

    /// The name nearest to what was typed.
    static String nearest(List<String> words, Named named) {
        return named.names().stream()
                .min(Comparator.comparingInt(name -> distance(words, FoldedName.words(name.text()))))
                .orElse(named.names().getFirst())
                .text();
    }

    /// Letters to change so that each word is one of the name.
    static int distance(List<String> words, List<String> name) {
        return words.stream()
                .mapToInt(word -> name.stream()
                        .mapToInt(other -> edits(word, other))
                        .min()
                        .orElse(word.length()))
                .sum();
    }

    /// Letters to insert, leave out, change or swap with a neighbour.
    static int edits(String one, String other) {
        return edits(one, other, Math.max(one.length(), other.length()));
    }

    /// The same, told exactly only up to so many; some number above it when there are more.
    static int edits(String one, String other, int most) {
        if (Long.bitCount(letters(one) ^ letters(other)) > 2 * most) {
            return most + 1;
        }
        int width = other.length() + 1;
        int[] before = new int[width];
        int[] above = new int[width];
        int[] row = new int[width];
        for (int j = 0; j < width; j++) {
            above[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            row[0] = i;
            int least = i;
            char letter = one.charAt(i - 1);
            for (int j = 1; j < width; j++) {
                char opposite = other.charAt(j - 1);
                int cost = Math.min(Math.min(above[j], row[j - 1]) + 1, above[j - 1] + (letter == opposite ? 0 : 1));
                if (i > 1 && j > 1 && letter == other.charAt(j - 2) && one.charAt(i - 2) == opposite) {
                    cost = Math.min(cost, before[j - 2] + 1);
                }
                row[j] = cost;
                least = Math.min(least, cost);
            }
            if (least > most) {
                return most + 1;
            }
            int[] free = before;
            before = above;
            above = row;
            row = free;
        }
        return above[width - 1];
    }

    /// Which letters a word has, a bit each; one letter amiss changes no more than two.
    private static long letters(String word) {
        long bits = 0;
        for (int at = 0; at < word.length(); at++) {
            bits |= 1L << word.charAt(at);
        }
        return bits;
    }
}
