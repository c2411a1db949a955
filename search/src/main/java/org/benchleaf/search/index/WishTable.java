package org.benchleaf.search.index;

import java.util.Optional;
import org.benchleaf.search.fit.Occasion;
import org.benchleaf.search.fit.Outcome;
import org.benchleaf.shared.need.WeighedWish;

/// What one wish adds to each plant's rank, ready for a pass over documents.
///
/// A score holds the weight met above the nearness (see [NeedPass#RANK]); a flag has the wish's bit in the lower
/// half where it is missed, in the upper half where it is unknown.
sealed interface WishTable {
    void add(Segment segment, int from, int count, long[] score, long[] flag);

    static WishTable of(
            WeighedWish weighed, int bit, Occasion occasion, Dictionaries dictionaries, StockColumns stock) {
        Optional<Basis> basis = Basis.of(weighed.wish());
        if (basis.isEmpty()) {
            StockWish wish = StockWish.of(weighed.wish(), occasion, stock)
                    .orElseThrow(() -> new IllegalStateException("a wish without a basis: " + weighed));
            return new OfStock(wish, weighed.weight(), bit);
        }
        short[] outcomes = dictionaries.of(basis.get()).outcomes(weighed.wish());
        long[] scores = new long[outcomes.length];
        long[] flags = new long[outcomes.length];
        for (int code = 0; code < outcomes.length; code++) {
            scores[code] = score(outcomes[code], weighed.weight());
            flags[code] = flag(outcomes[code], bit);
        }
        return new OfFacts(basis.get(), scores, flags);
    }

    private static long score(int outcome, double weight) {
        return (long) Outcome.met(outcome, weight) << NeedPass.MET_SHIFT
                | (long) Outcome.near(outcome, weight) << NeedPass.NEAR_SHIFT;
    }

    private static long flag(int outcome, int bit) {
        return Outcome.isMet(outcome) ? 0 : outcome == Outcome.UNKNOWN ? 1L << bit + 32 : 1L << bit;
    }

    /// A wish about facts: two look-ups by the code of the facts.
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record OfFacts(Basis basis, long[] scores, long[] flags) implements WishTable {
        @Override
        public void add(Segment segment, int from, int count, long[] score, long[] flag) {
            segment.column(basis).add(from, count, scores, flags, score, flag);
        }
    }

    /// A wish about stock or price: worked out from the packed stock.
    record OfStock(StockWish wish, double weight, int bit) implements WishTable {
        @Override
        public void add(Segment segment, int from, int count, long[] score, long[] flag) {
            int[] outcomes = new int[count];
            wish.outcomes(segment.slots(), from, count, outcomes);
            // most plants have none of a size, so most outcomes are the one before
            int last = Outcome.MET;
            long lastScore = score(last, weight);
            long lastFlag = flag(last, bit);
            for (int i = 0; i < count; i++) {
                if (outcomes[i] != last) {
                    last = outcomes[i];
                    lastScore = score(last, weight);
                    lastFlag = flag(last, bit);
                }
                score[i] += lastScore;
                flag[i] |= lastFlag;
            }
        }
    }
}
