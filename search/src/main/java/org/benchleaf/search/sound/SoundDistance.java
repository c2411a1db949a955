package org.benchleaf.search.sound;

import java.util.List;

/// How unlike two texts of sounds are; 0 for the same, about 8 for each consonant heard as quite another one.
public final class SoundDistance {
    private SoundDistance() {}

    /// The distance between all of one and all of the other.
    ///
    /// @return the distance, or some number above `most` when it is farther
    public static int between(String one, String other, int most) {
        int[] row = new int[other.length() + 1];
        for (int j = 1; j <= other.length(); j++) {
            row[j] = row[j - 1] + SoundCosts.missing(other.charAt(j - 1));
        }
        int least = 0;
        for (int i = 1; i <= one.length() && least <= most; i++) {
            least = step(row, one.charAt(i - 1), other);
        }
        return Math.max(least, row[other.length()]);
    }

    /// The distance between what was said and nothing at all.
    public static int weight(String said) {
        int weight = 0;
        for (int place = 0; place < said.length(); place++) {
            weight += SoundCosts.missing(said.charAt(place));
        }
        return weight;
    }

    /// The distance between what was said and the nearest run of whole words of a name.
    ///
    /// @param words the sounds of the name's words
    /// @param unsaid cost of each word of the name that was not said
    public static int withinName(String said, List<String> words, int unsaid) {
        String name = String.join("", words);
        int[] bounds = new int[words.size() + 1];
        int[] row = new int[name.length() + 1];
        for (int word = 0; word < words.size(); word++) {
            bounds[word + 1] = bounds[word] + words.get(word).length();
            for (int j = bounds[word] + 1; j <= bounds[word + 1]; j++) {
                row[j] = row[j - 1] + SoundCosts.missing(name.charAt(j - 1));
            }
            row[bounds[word + 1]] = Math.min(row[bounds[word + 1]], (word + 1) * unsaid);
        }
        for (int i = 1; i <= said.length(); i++) {
            step(row, said.charAt(i - 1), name);
        }
        int best = row[name.length()];
        for (int word = 0; word < bounds.length; word++) {
            best = Math.min(best, row[bounds[word]] + (bounds.length - 1 - word) * unsaid);
        }
        return best;
    }

    /// @return the least of the row
    private static int step(int[] row, char sound, String other) {
        int diagonal = row[0];
        int missing = SoundCosts.missing(sound);
        row[0] += missing;
        int least = row[0];
        for (int j = 1; j < row.length; j++) {
            char heard = other.charAt(j - 1);
            int above = row[j];
            row[j] = Math.min(
                    diagonal + SoundCosts.change(sound, heard),
                    Math.min(above + missing, row[j - 1] + SoundCosts.missing(heard)));
            diagonal = above;
            least = Math.min(least, row[j]);
        }
        return least;
    }
}
