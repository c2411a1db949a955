package org.benchleaf.search.index;

/// Counts plants by which wishes they do not meet, while a pass goes over them.
public final class Tally {
    private final int[] one;
    private final int[][] two;
    private int total;
    private int meetAll;
    private int missNone;

    Tally(int wishes) {
        one = new int[wishes];
        two = new int[wishes][wishes];
    }

    /// Adds what another counted.
    void add(Tally other) {
        total += other.total;
        meetAll += other.meetAll;
        missNone += other.missNone;
        for (int wish = 0; wish < one.length; wish++) {
            one[wish] += other.one[wish];
            for (int second = 0; second < one.length; second++) {
                two[wish][second] += other.two[wish][second];
            }
        }
    }

    /// Adds to the plants that are not known to miss a fixed wish.
    void addTotal(int plants) {
        total += plants;
    }

    void countMeetsAll() {
        meetAll++;
    }

    /// Counts a plant that misses nothing, but of which something asked is not known.
    void countMissesNone() {
        missNone++;
    }

    /// Counts a plant by the wishes it does not meet; only those with one or two matter.
    ///
    /// @param flags a bit for each wish known to be missed, and from bit 32 on for each that is unknown
    void count(long flags) {
        int notMet = (int) (flags | flags >>> 32);
        int first = Integer.numberOfTrailingZeros(notMet);
        switch (Integer.bitCount(notMet)) {
            case 1 -> one[first]++;
            case 2 -> two[first][31 - Integer.numberOfLeadingZeros(notMet)]++;
            default -> {}
        }
    }

    /// Plants that are not known to miss a fixed wish.
    public int total() {
        return total;
    }

    public int meetAll() {
        return meetAll;
    }

    /// Plants that miss no wish, but of which something asked is not known.
    public int missNone() {
        return missNone;
    }

    /// Plants that meet every wish but this one.
    public int allBut(int wish) {
        return one[wish];
    }

    /// Plants that meet every wish but these two or one of them.
    public int allBut(int wish, int other) {
        return one[wish] + one[other] + two[Math.min(wish, other)][Math.max(wish, other)];
    }
}
