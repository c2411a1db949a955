package org.benchleaf.search.sound;

import java.util.Arrays;

/// How far a word read letter by letter is from another one, as a machine that is built while it runs:
/// each step looks one number up, where comparing letter by letter would fill a row of a table.
///
/// A letter inserted, left out, changed or swapped with its neighbour counts one. For one word and one
/// thread.
final class EditStates {
    /// No word that begins so is near enough.
    static final int DEAD = -1;

    private static final int UNKNOWN = -2;
    private static final int ASCII = 128;

    private final String word;
    private final int most;
    /// Cells of a row that can be near enough: those close to the diagonal.
    private final int width;
    private final byte[] classOf = new byte[ASCII];
    private final char[] letters;
    private final int classes;

    private int size;
    private int[] next;
    private byte[] depth = new byte[64];
    private byte[] before = new byte[64];
    private byte[] least = new byte[64];
    private int[] rows = new int[64];
    private int[] rowsAbove = new int[64];
    private int[] found = new int[128];

    /// @param most 0 to 2
    EditStates(String word, int most) {
        this.word = word;
        this.most = most;
        this.width = 2 * most + 1;
        char[] distinct = new char[word.length()];
        int count = 0;
        for (int at = 0; at < word.length(); at++) {
            char letter = word.charAt(at);
            if (word.indexOf(letter) == at) {
                distinct[count++] = letter;
                if (letter < ASCII) {
                    classOf[letter] = (byte) count;
                }
            }
        }
        this.letters = Arrays.copyOf(distinct, count);
        this.classes = count + 1;
        this.next = new int[64 * classes];
        int row = 0;
        for (int b = 0; b < width; b++) {
            int j = b - most;
            row |= (j < 0 || j > word.length() ? most + 1 : j) << 2 * b;
        }
        state(0, row, full(), 0, 0);
    }

    private int full() {
        int row = 0;
        for (int b = 0; b < width; b++) {
            row |= most + 1 << 2 * b;
        }
        return row;
    }

    int start() {
        return 0;
    }

    /// The state after one more letter, or [#DEAD].
    int next(int state, char letter) {
        int at = state * classes + classOf(letter);
        int known = next[at];
        if (known == UNKNOWN) {
            known = step(state, classOf(letter));
            next[at] = known;
        }
        return known;
    }

    int most() {
        return most;
    }

    /// Letters amiss at least, whatever is read after this.
    int least(int state) {
        return least[state];
    }

    /// Letters amiss when the word read ends here; more than the most when it is not near enough.
    int cost(int state) {
        int b = word.length() - depth[state] + most;
        return b < 0 || b >= width ? most + 1 : cell(rows[state], b);
    }

    private int classOf(char letter) {
        if (letter < ASCII) {
            return classOf[letter];
        }
        for (int at = 0; at < letters.length; at++) {
            if (letters[at] == letter) {
                return at + 1;
            }
        }
        return 0;
    }

    private static int cell(int row, int b) {
        return row >> 2 * b & 3;
    }

    private int step(int state, int letter) {
        int deep = depth[state] + 1;
        int above = rows[state];
        int row = 0;
        int fewest = most + 1;
        for (int b = 0; b < width; b++) {
            int j = deep + b - most;
            int cost = most + 1;
            if (j == 0) {
                cost = Math.min(cost, deep);
            } else if (j > 0 && j <= word.length()) {
                boolean same = letter != 0 && word.charAt(j - 1) == letters[letter - 1];
                cost = Math.min(cost, cell(above, b) + (same ? 0 : 1));
                if (b + 1 < width) {
                    cost = Math.min(cost, cell(above, b + 1) + 1);
                }
                if (b > 0) {
                    cost = Math.min(cost, cell(row, b - 1) + 1);
                }
                if (deep > 1
                        && j > 1
                        && letter != 0
                        && before[state] != 0
                        && word.charAt(j - 2) == letters[letter - 1]
                        && word.charAt(j - 1) == letters[before[state] - 1]) {
                    cost = Math.min(cost, cell(rowsAbove[state], b) + 1);
                }
            }
            row |= cost << 2 * b;
            fewest = Math.min(fewest, cost);
        }
        return fewest > most ? DEAD : state(deep, row, above, letter, fewest);
    }

    /// The number of a state, which is a new one when none is like it.
    private int state(int deep, int row, int above, int letter, int fewest) {
        int slot = (((deep * 31 + row) * 31 + above) * 31 + letter) * 0x9E3779B1 >>> 8 & found.length - 1;
        while (found[slot] != 0) {
            int known = found[slot] - 1;
            if (depth[known] == deep && rows[known] == row && rowsAbove[known] == above && before[known] == letter) {
                return known;
            }
            slot = slot + 1 & found.length - 1;
        }
        if (size == rows.length) {
            grow();
            return state(deep, row, above, letter, fewest);
        }
        found[slot] = size + 1;
        depth[size] = (byte) deep;
        rows[size] = row;
        rowsAbove[size] = above;
        before[size] = (byte) letter;
        least[size] = (byte) fewest;
        Arrays.fill(next, size * classes, (size + 1) * classes, UNKNOWN);
        return size++;
    }

    private void grow() {
        int larger = size * 2;
        depth = Arrays.copyOf(depth, larger);
        before = Arrays.copyOf(before, larger);
        least = Arrays.copyOf(least, larger);
        rows = Arrays.copyOf(rows, larger);
        rowsAbove = Arrays.copyOf(rowsAbove, larger);
        next = Arrays.copyOf(next, larger * classes);
        int[] old = found;
        found = new int[larger * 2];
        for (int each : old) {
            if (each != 0) {
                int known = each - 1;
                int slot =
                        (((depth[known] * 31 + rows[known]) * 31 + rowsAbove[known]) * 31 + before[known]) * 0x9E3779B1
                                        >>> 8
                                & found.length - 1;
                while (found[slot] != 0) {
                    slot = slot + 1 & found.length - 1;
                }
                found[slot] = each;
            }
        }
    }
}
