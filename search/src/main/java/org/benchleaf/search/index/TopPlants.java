package org.benchleaf.search.index;

/// Keeps the best of many plants of one segment: by rank, higher first, then by place in the order of names.
final class TopPlants {
    private final long[] ranks;
    private final int[] places;
    private int size;

    TopPlants(int limit) {
        ranks = new long[limit];
        places = new int[limit];
    }

    /// A plant of a lower rank does not get in.
    long least() {
        return size < ranks.length ? Long.MIN_VALUE : ranks[0];
    }

    void offer(long rank, int place) {
        if (size < ranks.length) {
            int at = size++;
            while (at > 0 && isWorse(rank, place, ranks[(at - 1) / 2], places[(at - 1) / 2])) {
                move((at - 1) / 2, at);
                at = (at - 1) / 2;
            }
            put(at, rank, place);
        } else if (isWorse(ranks[0], places[0], rank, place)) {
            sink(rank, place);
        }
    }

    /// The worst kept stands at index 0; a better one takes its place and sinks to where it belongs.
    private void sink(long rank, int place) {
        int at = 0;
        while (true) {
            int child = 2 * at + 1;
            if (child + 1 < size && isWorse(ranks[child + 1], places[child + 1], ranks[child], places[child])) {
                child++;
            }
            if (child >= size || !isWorse(ranks[child], places[child], rank, place)) {
                put(at, rank, place);
                return;
            }
            move(child, at);
            at = child;
        }
    }

    private static boolean isWorse(long rank, int place, long otherRank, int otherPlace) {
        return rank != otherRank ? rank < otherRank : place > otherPlace;
    }

    private void move(int from, int to) {
        put(to, ranks[from], places[from]);
    }

    private void put(int at, long rank, int place) {
        ranks[at] = rank;
        places[at] = place;
    }

    /// The ranks kept.
    java.util.stream.LongStream ranks() {
        return java.util.Arrays.stream(ranks, 0, size);
    }

    int size() {
        return size;
    }

    /// In no promised order.
    long rank(int index) {
        return ranks[index];
    }

    int place(int index) {
        return places[index];
    }
}
