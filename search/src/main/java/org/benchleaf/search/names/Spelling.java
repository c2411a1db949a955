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
        int[][] cost = new int[one.length() + 1][other.length() + 1];
        for (int i = 0; i <= one.length(); i++) {
            for (int j = 0; j <= other.length(); j++) {
                if (i == 0 || j == 0) {
                    cost[i][j] = i + j;
                    continue;
                }
                int change = one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1;
                cost[i][j] = Math.min(Math.min(cost[i - 1][j], cost[i][j - 1]) + 1, cost[i - 1][j - 1] + change);
                if (i > 1
                        && j > 1
                        && one.charAt(i - 1) == other.charAt(j - 2)
                        && one.charAt(i - 2) == other.charAt(j - 1)) {
                    cost[i][j] = Math.min(cost[i][j], cost[i - 2][j - 2] + 1);
                }
            }
        }
        return cost[one.length()][other.length()];
    }
}
