package org.benchleaf.catalog.intake;

import java.util.OptionalLong;

/// Remembers a number for each of many texts without keeping the texts, in about 40 bytes a text: a list
/// of 200,000 rows needs 8 MiB.
///
/// Two sums of 64 bits stand for a text. Texts that differ share both once in 10^19 pairs.
public final class TextNumbers {
    private static final int SMALLEST = 64;

    private long[] ones = new long[SMALLEST];
    private long[] others = new long[SMALLEST];
    private long[] numbers = new long[SMALLEST];
    private int size;

    /// Remembers a number unless there is one already.
    ///
    /// @return the number that was there
    public OptionalLong putIfAbsent(String text, long number) {
        long one = one(text);
        long other = other(text);
        int at = place(one, other);
        if (isTaken(at)) {
            return OptionalLong.of(numbers[at]);
        }
        set(at, one, other, number);
        return OptionalLong.empty();
    }

    /// Remembers a number in place of an earlier one.
    public void put(String text, long number) {
        long one = one(text);
        long other = other(text);
        int at = place(one, other);
        if (isTaken(at)) {
            numbers[at] = number;
        } else {
            set(at, one, other, number);
        }
    }

    public OptionalLong get(String text) {
        int at = place(one(text), other(text));
        return isTaken(at) ? OptionalLong.of(numbers[at]) : OptionalLong.empty();
    }

    public int size() {
        return size;
    }

    private void set(int at, long one, long other, long number) {
        ones[at] = one;
        others[at] = other;
        numbers[at] = number;
        size++;
        if (size * 3L > ones.length * 2L) {
            grow();
        }
    }

    private void grow() {
        long[] oldOnes = ones;
        long[] oldOthers = others;
        long[] oldNumbers = numbers;
        ones = new long[oldOnes.length * 2];
        others = new long[oldOnes.length * 2];
        numbers = new long[oldOnes.length * 2];
        for (int old = 0; old < oldOnes.length; old++) {
            if ((oldOnes[old] | oldOthers[old]) != 0) {
                int at = place(oldOnes[old], oldOthers[old]);
                ones[at] = oldOnes[old];
                others[at] = oldOthers[old];
                numbers[at] = oldNumbers[old];
            }
        }
    }

    private boolean isTaken(int at) {
        return (ones[at] | others[at]) != 0;
    }

    private int place(long one, long other) {
        int at = (int) (one ^ one >>> 32) & ones.length - 1;
        while (isTaken(at) && (ones[at] != one || others[at] != other)) {
            at = at + 1 & ones.length - 1;
        }
        return at;
    }

    private static long one(String text) {
        long sum = 1125899906842597L;
        for (int at = 0; at < text.length(); at++) {
            sum = 31 * sum + text.charAt(at);
        }
        sum = (sum ^ sum >>> 32) * 0x9E3779B97F4A7C15L;
        return sum ^ sum >>> 29;
    }

    /// Never 0, so that a free place is known.
    private static long other(String text) {
        long sum = 0xCBF29CE484222325L;
        for (int at = 0; at < text.length(); at++) {
            sum = (sum ^ text.charAt(at)) * 0x100000001B3L;
        }
        return sum == 0 ? 1 : sum;
    }
}
