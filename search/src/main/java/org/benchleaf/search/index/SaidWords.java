package org.benchleaf.search.index;

import java.util.ArrayList;
import java.util.List;
import org.benchleaf.search.sound.Sounds;

/// Neighbouring words typed or said that may be one word of a name: each alone, and up to five joined.
///
/// @param first place of the first of them
/// @param count how many
/// @param letters them joined
/// @param sounds what is heard
public record SaidWords(int first, int count, String letters, String sounds) {
    private static final int MOST_JOINED = 5;
    private static final int LONGEST = 14;
    private static final int LONG = 8;

    /// All of a text, by first place and then by count.
    public static List<SaidWords> of(List<String> words) {
        List<SaidWords> all = new ArrayList<>();
        for (int first = 0; first < words.size(); first++) {
            for (int count = 1; count <= MOST_JOINED && first + count <= words.size(); count++) {
                List<String> part = words.subList(first, first + count);
                String letters = String.join("", part);
                if (count == 1 || letters.length() <= LONGEST + count && longWords(part) < 2) {
                    all.add(new SaidWords(first, count, letters, Sounds.of(part)));
                }
            }
        }
        return all;
    }

    /// Words long enough to be words of a name themselves.
    private static long longWords(List<String> part) {
        return part.stream().filter(word -> word.length() >= LONG).count();
    }

    /// Letters that may be wrong in a word of this length: in short ones a letter more or less makes another word.
    ///
    /// @param most 1 or 2
    public int edits(int most) {
        return Math.min(most, letters.length() < 4 ? 0 : letters.length() < 6 ? 1 : 2);
    }

    /// How far off its sounds may be.
    public int mostUnlike() {
        return sounds.length() < 2 ? 0 : Math.min(count > 1 ? 18 : 15, 1 + sounds.length() * 3 / 2);
    }
}
