package org.benchleaf.search.index;

/// What a pass does with a plant, by how many wishes it misses and of how many its facts are not known: one look-up
/// for each of many plants.
final class Kinds {
    /// It misses nothing; of some wishes its facts may not be known.
    static final int MISSES_NONE = 1;

    static final int MEETS_ALL = 2;
    /// So few wishes are not met that it is counted by them.
    static final int FEW_NOT_MET = 4;
    /// It misses something, but a facet may set all of that aside.
    static final int ASIDE = 8;

    private final byte[] kinds = new byte[Rank.COUNTS];

    /// @param mostNotMet so many wishes not met are few
    /// @param mostOwn so many wishes a facet may set aside
    /// @param ownIsCounted whether ranks tell how many of those missed are set aside
    Kinds(int mostNotMet, int mostOwn, boolean ownIsCounted) {
        int mostMissed = Math.max(mostNotMet, mostOwn);
        for (int own = 0; own <= Rank.MOST_OWN; own++) {
            for (int missed = own; missed <= mostMissed; missed++) {
                boolean aside = missed > 0 && missed <= mostOwn && (!ownIsCounted || missed == own);
                for (int unknown = 0; unknown <= Rank.MOST_WISHES; unknown++) {
                    int notMet = missed + unknown;
                    kinds[Rank.counts(own, missed, unknown)] = (byte) ((missed == 0 ? MISSES_NONE : 0)
                            | (notMet == 0 ? MEETS_ALL : 0)
                            | (notMet > 0 && notMet <= mostNotMet ? FEW_NOT_MET : 0)
                            | (aside ? ASIDE : 0));
                }
            }
        }
    }

    /// @return any of the bits above; 0 for a plant that nothing counts
    int of(long sum) {
        return kinds[Rank.counts(sum)];
    }
}
