package org.benchleaf.search.index;

import org.benchleaf.search.fit.Merit;
import org.benchleaf.search.fit.Outcome;
import org.benchleaf.shared.need.WeighedWish;

/// A plant's rank while a need is gone through, packed into one number so that each wish is one look-up and one
/// addition: from above, how many fixed wishes are missed (5 bits, for at most 31 wishes), how many of those
/// that facets set aside (3 bits), how many at all and how many unknown (5 bits each), then what sorts plants:
/// weight met and nearness (19 bits each, for weights up to 10), standing (2 bits) and merit (5 bits).
final class Rank {
    private static final int STANDING_SHIFT = 5;
    private static final int NEAR_SHIFT = 7;
    private static final int MET_SHIFT = NEAR_SHIFT + 19;
    private static final int UNKNOWN_SHIFT = MET_SHIFT + 19;
    private static final int MISSED_SHIFT = UNKNOWN_SHIFT + 5;
    private static final int OWN_SHIFT = MISSED_SHIFT + 5;
    private static final int FIXED_SHIFT = OWN_SHIFT + 3;
    private static final int OWN_COUNT = 0x7;
    private static final int COUNT = 0x1F;

    static final int COUNTS = 1 << FIXED_SHIFT - UNKNOWN_SHIFT;

    /// A sum below this one misses no fixed wish.
    static final long MISSES_FIXED = 1L << FIXED_SHIFT;

    private static final long SORTS = (1L << UNKNOWN_SHIFT) - 1;

    /// The best that can be had of a plant, as [StockColumns#standings] says it.
    private static final int BEST_STANDING = 2;

    private static final long MOST_BESIDE = sorting(0, BEST_STANDING, Merit.MOST);

    private Rank() {}

    static final int MOST_WISHES = COUNT;

    /// So many wishes can be marked as set aside for facets.
    static final int MOST_OWN = OWN_COUNT;

    /// What one wish adds.
    ///
    /// @param own whether a facet sets it aside
    static long of(int outcome, WeighedWish wish, boolean own) {
        long score = (long) Outcome.met(outcome, wish) << MET_SHIFT | (long) Outcome.near(outcome, wish) << NEAR_SHIFT;
        if (Outcome.isMet(outcome)) {
            return score;
        }
        if (!Outcome.isMissed(outcome)) {
            return score | 1L << UNKNOWN_SHIFT;
        }
        return score | 1L << MISSED_SHIFT | (own ? 1L << OWN_SHIFT : 0) | (wish.fixed() ? MISSES_FIXED : 0);
    }

    /// The part that sorts plants, once standing (0 to 2) and merit (0 to 31) are known.
    static long sorting(long sum, int standing, int merit) {
        return (sum & SORTS)
                + ((long) Merit.nearness(merit) << NEAR_SHIFT)
                + ((long) standing << STANDING_SHIFT)
                + merit;
    }

    /// The most that [#sorting] can say of a plant.
    static long mostSorting(long sum) {
        return (sum & SORTS) + MOST_BESIDE;
    }

    /// How many wishes are missed, unknown and set aside, as one number below [#COUNTS].
    static int counts(long sum) {
        return (int) (sum >>> UNKNOWN_SHIFT) & COUNTS - 1;
    }

    /// The same number from its parts.
    ///
    /// @param own how many of those missed are set aside for a facet, up to [#MOST_OWN]
    static int counts(int own, int missed, int unknown) {
        return own << OWN_SHIFT - UNKNOWN_SHIFT | missed << MISSED_SHIFT - UNKNOWN_SHIFT | unknown;
    }

    static int missed(long sum) {
        return (int) (sum >>> MISSED_SHIFT) & COUNT;
    }

    static int unknown(long sum) {
        return (int) (sum >>> UNKNOWN_SHIFT) & COUNT;
    }
}
