package org.benchleaf.search.sound;

import java.util.Arrays;
import java.util.List;

/// Words as a tree of letters, walked from front to back: finds those spelt or sounding nearly like
/// another one without looking at every word. Unchanging; safe for many threads.
public final class WordTrie {
    /// Longer words are left out; the longest epithet of USDA PLANTS has 21 letters.
    private static final int LONGEST = 48;

    private static final int NONE = -1;

    private static final int LETTER_AT = 32;
    private static final int DEPTH_AT = 48;
    private static final long WORD = 1L << 56;
    private static final long END = 0xFFFF_FFFFL;

    /// Of each node, in the order of a walk: where the next one stands that is not below it, its letter, its
    /// depth, and whether a word ends here; together, so that looking at a node costs one reach into memory.
    private long[] nodes = new long[1024];

    private int[] words = new int[1024];
    private int size;
    private int deepest;

    private WordTrie() {}

    /// A tree of distinct words, so sorted that words with the same beginning stand together; a word is
    /// known by its place in the list.
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
                trie.nodes[trie.size - 1] |= WORD;
                before = text;
            }
        }
        trie.close(open, 0, before.length());
        trie.nodes = Arrays.copyOf(trie.nodes, trie.size);
        trie.words = Arrays.copyOf(trie.words, trie.size);
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
            nodes[open[depth]] |= size;
        }
    }

    private int node(char letter, int depth) {
        if (size == nodes.length) {
            int larger = size + (size >> 1);
            nodes = Arrays.copyOf(nodes, larger);
            words = Arrays.copyOf(words, larger);
        }
        nodes[size] = (long) letter << LETTER_AT | (long) depth << DEPTH_AT;
        words[size] = NONE;
        deepest = Math.max(deepest, depth);
        return size++;
    }

    private static char letter(long node) {
        return (char) (node >> LETTER_AT);
    }

    private static int depth(long node) {
        return (int) (node >> DEPTH_AT) & 0xFF;
    }

    private static int end(long node) {
        return (int) (node & END);
    }

    /// The words at most so many letters off: inserted, left out, changed, or swapped with a neighbour.
    ///
    /// @param most 0 to 2
    public void spelt(String word, int most, Found found) {
        if (most == 0) {
            int same = find(word, 0, word.length());
            if (same != NONE) {
                found.at(same, 0);
            }
            return;
        }
        EditStates states = new EditStates(word, most);
        int[] stateAt = new int[deepest + 1];
        stateAt[0] = states.start();
        for (int at = 0; at < size; ) {
            long node = nodes[at];
            int depth = depth(node);
            int state = states.next(stateAt[depth - 1], letter(node));
            if (state == EditStates.DEAD) {
                at = end(node);
                continue;
            }
            stateAt[depth] = state;
            if ((node & WORD) != 0) {
                int cost = states.cost(state);
                if (cost <= most) {
                    found.at(words[at], cost);
                }
            }
            at++;
        }
    }

    /// The words that a text begins with and ends with, told with their length as the cost.
    ///
    /// @param least letters of each
    public void halves(String text, int least, Found found) {
        int from = 0;
        int to = size;
        for (int at = 0; at < text.length() - least && from < to; at++) {
            int node = child(from, to, text.charAt(at));
            if (node == NONE) {
                break;
            }
            if (at + 1 >= least && words[node] != NONE) {
                found.at(words[node], at + 1);
            }
            from = node + 1;
            to = end(nodes[node]);
        }
        for (int start = least; start <= text.length() - least; start++) {
            int word = find(text, start, text.length());
            if (word != NONE) {
                found.at(word, text.length() - start);
            }
        }
    }

    /// The word that is this part of a text.
    private int find(String text, int start, int end) {
        int from = 0;
        int to = size;
        int node = NONE;
        for (int at = start; at < end; at++) {
            node = child(from, to, text.charAt(at));
            if (node == NONE) {
                return NONE;
            }
            from = node + 1;
            to = end(nodes[node]);
        }
        return node == NONE ? NONE : words[node];
    }

    private int child(int from, int to, char letter) {
        int node = from;
        while (node < to) {
            if (letter(nodes[node]) == letter) {
                return node;
            }
            node = end(nodes[node]);
        }
        return NONE;
    }

    /// The words whose sounds are at most so far off; the words of this tree and the one asked are sounds.
    public void sounding(String sounds, int most, Found found) {
        int length = sounds.length();
        int[][] rows = rows(length);
        for (int j = 1; j <= length; j++) {
            rows[0][j] = rows[0][j - 1] + SoundCosts.missing(sounds.charAt(j - 1));
        }
        for (int at = 0; at < size; ) {
            long node = nodes[at];
            int depth = depth(node);
            char sound = letter(node);
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
            if ((node & WORD) != 0 && row[length] <= most) {
                found.at(words[at], row[length]);
            }
            at = least <= most ? at + 1 : end(node);
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
