package org.benchleaf.search.sound;

import java.util.Arrays;
import java.util.List;

/// Words as a tree of letters, walked from front to back: finds those spelt or sounding nearly like another one
/// without
/// looking at every word. Unchanging; safe for many threads.
public final class WordTrie {
    /// Longer words are left out; the longest epithet of USDA PLANTS has 21 letters.
    private static final int LONGEST = 48;

    private static final int NONE = -1;

    private char[] letters = new char[1024];
    private byte[] depths = new byte[1024];
    private int[] ends = new int[1024];
    private int[] words = new int[1024];
    private int size;
    private int deepest;

    private WordTrie() {}

    /// A tree of distinct words, so sorted that words with the same beginning stand together; a word is known by its
    /// place in the list.
    public static WordTrie of(List<String> sorted) {
        WordTrie trie = new WordTrie();
        int[] open = new int[LONGEST + 1];
        String before = "";
        for (int word = 0; word < sorted.size(); word++) {
            String text = sorted.get(word);
            if (text.length() <= LONGEST && !text.isEmpty()) {
                int same = common(before, text);
                trie.close(open, same, before.length());
                for (int depth = same; depth < text.length(); depth++) {
                    open[depth] = trie.node(text.charAt(depth), depth + 1);
                }
                trie.words[trie.size - 1] = word;
                before = text;
            }
        }
        trie.close(open, 0, before.length());
        return trie;
    }

    private static int common(String one, String other) {
        int most = Math.min(one.length(), other.length());
        int same = 0;
        while (same < most && one.charAt(same) == other.charAt(same)) {
            same++;
        }
        return same;
    }

    private void close(int[] open, int from, int to) {
        for (int depth = from; depth < to; depth++) {
            ends[open[depth]] = size;
        }
    }

    private int node(char letter, int depth) {
        if (size == letters.length) {
            int larger = size + (size >> 1);
            letters = Arrays.copyOf(letters, larger);
            depths = Arrays.copyOf(depths, larger);
            ends = Arrays.copyOf(ends, larger);
            words = Arrays.copyOf(words, larger);
        }
        letters[size] = letter;
        depths[size] = (byte) depth;
        words[size] = NONE;
        deepest = Math.max(deepest, depth);
        return size++;
    }

    /// The words at most so many letters off: inserted, left out, changed, or swapped with a neighbour.
    public void spelt(String word, int most, Found found) {
        int length = word.length();
        int[][] rows = rows(length);
        char[] path = new char[deepest + 1];
        for (int j = 0; j <= length; j++) {
            rows[0][j] = j;
        }
        for (int node = 0; node < size; ) {
            int depth = depths[node];
            char letter = letters[node];
            path[depth] = letter;
            int[] above = rows[depth - 1];
            int[] row = rows[depth];
            // farther from the diagonal than this, more letters would be amiss
            int from = Math.max(1, depth - most);
            int to = Math.min(length, depth + most);
            row[from - 1] = from == 1 ? depth : most + 1;
            int least = row[from - 1];
            for (int j = from; j <= to; j++) {
                int beside = j == depth + most ? most + 1 : above[j];
                int cost = Math.min(
                        Math.min(beside, row[j - 1]) + 1, above[j - 1] + (word.charAt(j - 1) == letter ? 0 : 1));
                if (depth > 1 && j > 1 && word.charAt(j - 2) == letter && word.charAt(j - 1) == path[depth - 1]) {
                    cost = Math.min(cost, rows[depth - 2][j - 2] + 1);
                }
                row[j] = cost;
                least = Math.min(least, cost);
            }
            if (to < length) {
                row[length] = most + 1;
            }
            if (from > length) {
                least = most + 1;
            }
            if (words[node] != NONE && row[length] <= most) {
                found.at(words[node], row[length]);
            }
            node = least <= most ? node + 1 : ends[node];
        }
    }

    /// The words whose sounds are at most so far off; the words of this tree and the one asked are sounds.
    public void sounding(String sounds, int most, Found found) {
        int length = sounds.length();
        int[][] rows = rows(length);
        for (int j = 1; j <= length; j++) {
            rows[0][j] = rows[0][j - 1] + SoundCosts.missing(sounds.charAt(j - 1));
        }
        for (int node = 0; node < size; ) {
            int depth = depths[node];
            char sound = letters[node];
            int missing = SoundCosts.missing(sound);
            int[] above = rows[depth - 1];
            int[] row = rows[depth];
            row[0] = above[0] + missing;
            int least = row[0];
            for (int j = 1; j <= length; j++) {
                char said = sounds.charAt(j - 1);
                int cost = Math.min(
                        above[j - 1] + SoundCosts.change(sound, said),
                        Math.min(above[j] + missing, row[j - 1] + SoundCosts.missing(said)));
                row[j] = cost;
                least = Math.min(least, cost);
            }
            if (words[node] != NONE && row[length] <= most) {
                found.at(words[node], row[length]);
            }
            node = least <= most ? node + 1 : ends[node];
        }
    }

    private int[][] rows(int length) {
        return new int[deepest + 1][length + 1];
    }

    /// Told each word found.
    public interface Found {
        /// @param word its place in the list the tree was made of
        /// @param cost how far off it is
        void at(int word, int cost);
    }
}
