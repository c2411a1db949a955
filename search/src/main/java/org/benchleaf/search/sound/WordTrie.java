package org.benchleaf.search.sound;

import java.util.Arrays;
import java.util.List;

/// Words as a tree of letters, walked from front to back: finds those spelt or sounding nearly like
/// another one without looking at every word. Unchanging; safe for many threads.
public final class WordTrie {
    /// Longer words are left out; the longest epithet of USDA PLANTS has 21 letters.
    private static final int LONGEST = 48;

    private static final int NONE = -1;

    private static final int FAR = 1_000_000;

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
        spelt(word, most, 0, 0, found);
    }

    /// The same without those of which more letters than a few are amiss among the first ones; all that have no
    /// more there are told.
    ///
    /// @param first how many letters of the word asked are the first ones
    /// @param early how many of the letters amiss may be among them
    void spelt(String word, int most, int first, int early, Found found) {
        if (most == 0) {
            int same = find(word, 0, word.length());
            if (same != NONE) {
                found.at(same, 0);
            }
            return;
        }
        walk(new EditStates(word, most), 0, 0, size, first, early, found);
    }

    /// The same without those that do not begin with the first letters of the word asked as they stand.
    void speltFrom(String word, int first, int most, Found found) {
        EditStates states = new EditStates(word, most);
        int state = states.start();
        int from = 0;
        int to = size;
        for (int at = 0; at < first; at++) {
            int node = child(from, to, word.charAt(at));
            if (node == NONE) {
                return;
            }
            state = states.next(state, word.charAt(at));
            tell(states, node, state, found);
            from = node + 1;
            to = end(nodes[node]);
        }
        walk(states, state, from, to, 0, 0, found);
    }

    private void walk(EditStates states, int start, int from, int to, int first, int early, Found found) {
        int[] stateAt = new int[deepest + 1];
        // A swap leaves one row of the table out; after a letter left out that may be the last of these.
        int told = first - early;
        int above = from < to ? depth(nodes[from]) - 1 : 0;
        stateAt[above] = start;
        for (int at = from; at < to; ) {
            long node = nodes[at];
            int depth = depth(node);
            int state = states.next(stateAt[depth - 1], letter(node));
            if (state == EditStates.DEAD || depth < told && states.least(state) > early) {
                at = end(node);
                continue;
            }
            stateAt[depth] = state;
            tell(states, at, state, found);
            at++;
        }
    }

    private void tell(EditStates states, int at, int state, Found found) {
        if ((nodes[at] & WORD) != 0) {
            int cost = states.cost(state);
            if (cost <= states.most()) {
                found.at(words[at], cost);
            }
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

    /// The words whose sounds are so near; the words of this tree and the one asked are sounds.
    ///
    /// Of each row of the table only the cells that can be near enough are filled; one beyond either
    /// end says `FAR`.
    ///
    /// @param most how far off what is heard may be after so many sounds of the one asked, from none to
    /// all of them
    void sounding(String sounds, int[] most, Found found) {
        int length = sounds.length();
        int[][] rows = new int[deepest + 1][length + 3];
        int[] lows = new int[deepest + 1];
        int[] highs = new int[deepest + 1];
        rows[0][0] = FAR;
        int reach = 0;
        for (int cost = 0; reach < length; reach++) {
            cost += SoundCosts.missing(sounds.charAt(reach));
            if (cost > most[reach + 1]) {
                break;
            }
            rows[0][reach + 2] = cost;
        }
        rows[0][reach + 2] = FAR;
        highs[0] = reach;
        for (int at = 0; at < size; ) {
            long node = nodes[at];
            int depth = depth(node);
            char sound = letter(node);
            int missing = SoundCosts.missing(sound);
            int[] above = rows[depth - 1];
            int[] row = rows[depth];
            int last = highs[depth - 1] + 1;
            int low = FAR;
            int high = -1;
            int left = FAR;
            for (int j = lows[depth - 1]; j <= length && (j <= last || left < FAR); j++) {
                int cost = (j <= last ? above[j + 1] : FAR) + missing;
                if (j > 0) {
                    char said = sounds.charAt(j - 1);
                    int changed = j <= last ? above[j] + SoundCosts.change(sound, said) : FAR;
                    cost = Math.min(cost, Math.min(changed, left + SoundCosts.missing(said)));
                }
                left = FAR;
                if (cost <= most[j]) {
                    left = cost;
                    low = Math.min(low, j);
                    high = j;
                }
                row[j + 1] = left;
            }
            if (high < 0) {
                at = end(node);
                continue;
            }
            row[low] = FAR;
            row[high + 2] = FAR;
            lows[depth] = low;
            highs[depth] = high;
            if (high == length && (node & WORD) != 0) {
                found.at(words[at], row[length + 1]);
            }
            at++;
        }
    }

    /// Told each word found.
    public interface Found {
        /// @param word its place in the list the tree was made of
        /// @param cost how far off it is
        void at(int word, int cost);
    }
}
