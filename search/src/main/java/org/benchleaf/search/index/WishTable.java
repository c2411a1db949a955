package org.benchleaf.search.index;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.search.fit.Occasion;
import org.benchleaf.search.fit.Outcome;
import org.benchleaf.shared.need.WeighedWish;

/// What one wish adds to each plant's [Rank], ready for a pass over documents.
sealed interface WishTable {
    /// Adds the wish to a run of plants.
    ///
    /// @param from first document
    /// @param count how many
    /// @param sums receives what it adds from index 0 on
    void addRun(Segment segment, int from, int count, long[] sums);

    /// Adds the wish to chosen plants.
    ///
    /// @param docs documents, of which the first `count` are meant
    /// @param sums one for each of `docs`
    void add(Segment segment, int[] docs, int count, long[] sums);

    /// What the wish adds to one plant.
    long of(Segment segment, int doc);

    static WishTable of(WeighedWish weighed, Occasion occasion, Dictionaries dictionaries, StockColumns stock) {
        Optional<Basis> basis = Basis.of(weighed.wish());
        if (basis.isEmpty()) {
            StockWish wish = StockWish.of(weighed.wish(), occasion, stock)
                    .orElseThrow(() -> new IllegalStateException("a wish without a basis: " + weighed));
            return new OfStock(wish, weighed, Rank.of(Outcome.MET, weighed), Rank.of(wish.ofNothing(), weighed));
        }
        short[] outcomes = dictionaries.of(basis.get()).outcomes(weighed.wish());
        long[] scores = new long[outcomes.length];
        for (int code = 0; code < outcomes.length; code++) {
            scores[code] = Rank.of(outcomes[code], weighed);
        }
        return new OfFacts(basis.get(), scores);
    }

    /// The same tables, those that look at the same facts added up to one: a need of thirty wishes, as substitutes
    /// have, then costs little more than its different facts.
    static List<WishTable> joined(List<WishTable> tables) {
        Map<Basis, long[]> sums = new EnumMap<>(Basis.class);
        List<WishTable> joined = new ArrayList<>();
        for (WishTable table : tables) {
            switch (table) {
                case OfFacts(Basis basis, long[] scores) -> sums.merge(basis, scores, WishTable::added);
                case OfStock stock -> joined.add(stock);
            }
        }
        sums.forEach((basis, scores) -> joined.add(new OfFacts(basis, scores)));
        return joined;
    }

    /// A dictionary may have grown between two wishes; codes given meanwhile stand in no column that is gone through.
    private static long[] added(long[] one, long[] other) {
        long[] sum = new long[Math.min(one.length, other.length)];
        for (int code = 0; code < sum.length; code++) {
            sum[code] = one[code] + other[code];
        }
        return sum;
    }

    /// A wish about facts: one look-up by the code of the facts.
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record OfFacts(Basis basis, long[] scores) implements WishTable {
        @Override
        public void addRun(Segment segment, int from, int count, long[] sums) {
            segment.column(basis).addRun(from, count, scores, sums);
        }

        @Override
        public void add(Segment segment, int[] docs, int count, long[] sums) {
            segment.column(basis).add(docs, count, scores, sums);
        }

        @Override
        public long of(Segment segment, int doc) {
            return scores[segment.column(basis).code(doc)];
        }
    }

    /// A wish about stock or price: worked out from the packed stock. Most plants have enough or nothing.
    record OfStock(StockWish wish, WeighedWish weighed, long met, long nothing) implements WishTable {
        @Override
        public void addRun(Segment segment, int from, int count, long[] sums) {
            for (int i = 0; i < count; i++) {
                sums[i] += of(segment, from + i);
            }
        }

        @Override
        public void add(Segment segment, int[] docs, int count, long[] sums) {
            for (int i = 0; i < count; i++) {
                sums[i] += of(segment, docs[i]);
            }
        }

        @Override
        public long of(Segment segment, int doc) {
            int outcome = wish.outcome(segment.slots()[doc]);
            return outcome == Outcome.MET ? met : outcome == wish.ofNothing() ? nothing : Rank.of(outcome, weighed);
        }
    }
}
