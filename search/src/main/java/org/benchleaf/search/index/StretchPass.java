package org.benchleaf.search.index;

import java.util.Arrays;
import java.util.List;
import org.apache.lucene.util.Bits;

/// The pass over one stretch of a segment: ranks, counts, and keeps the best. Used by one thread, once.
final class StretchPass {
    /// Small enough for the running sums to stay in the nearest cache.
    static final int BLOCK = 1024;

    private final Segment segment;
    private final List<Bits> filters;
    private final NeedTables need;
    private final TopPlants top;
    private final Tally tally;
    private final FacetPass facets;
    private final LoosenPass loosen;
    private final int mostMissed;
    private final long[] sums = new long[BLOCK];
    private final int[] docs = new int[BLOCK];
    private final NearlyAll near = new NearlyAll(BLOCK);

    /// @param filters what a document must pass to be ranked
    StretchPass(Segment segment, List<Bits> filters, NeedTables need, int limit) {
        this.segment = segment;
        this.filters = filters;
        this.need = need;
        this.top = new TopPlants(limit);
        this.tally = new Tally(need.tables().size());
        this.facets = need.newFacets();
        this.loosen = need.newLoosen();
        this.mostMissed = Math.max(facets.mostOwn(), loosen.mostMissed());
    }

    /// @param start first document, a multiple of [#BLOCK]
    /// @param end behind the last
    StretchPass run(int start, int end) {
        int total = 0;
        for (int from = start; from < end; from += BLOCK) {
            int count = chosen(from, Math.min(BLOCK, end - from));
            for (WishTable table : need.free()) {
                table.add(segment, docs, count, sums);
            }
            total += count;
            near.clear();
            for (int i = 0; i < count; i++) {
                take(docs[i], sums[i]);
            }
            facets.count(segment, near);
        }
        tally.addTotal(total);
        return this;
    }

    /// Chooses the plants of a block that miss no fixed wish.
    ///
    /// @return how many stand in `docs`, what fixed wishes add to them in `sums`
    private int chosen(int from, int count) {
        Arrays.fill(sums, 0, count, 0);
        for (WishTable table : need.fixed()) {
            table.addRun(segment, from, count, sums);
        }
        int chosen = 0;
        for (int i = 0; i < count; i++) {
            if (sums[i] < Rank.MISSES_FIXED && takes(from + i)) {
                docs[chosen] = from + i;
                sums[chosen++] = sums[i];
            }
        }
        return chosen;
    }

    private void take(int doc, long sum) {
        int slot = segment.slots()[doc];
        byte[] standings = need.standings();
        long rank = Rank.sorting(sum, slot < standings.length ? standings[slot] : 0, segment.merits()[doc]);
        if (top.mayTake(rank)) {
            top.offer(rank, segment.order()[doc]);
        }
        int missed = Rank.missed(sum);
        int notMet = missed + Rank.unknown(sum);
        if (missed == 0) {
            near.add(doc);
        }
        if (notMet == 0) {
            tally.countMeetsAll();
            loosen(doc, 0);
        } else if (notMet <= 2 || missed <= mostMissed) {
            takeNear(doc, missed, notMet);
        }
    }

    /// Few plants come this near to meeting all; for them alone it is looked up which wishes they do not meet.
    private void takeNear(int doc, int missed, int notMet) {
        if (missed == 0) {
            tally.countMissesNone();
            if (notMet > Math.max(2, mostMissed)) {
                return;
            }
        }
        long flags = flags(doc);
        tally.count(flags);
        loosen(doc, flags);
        if (missed > 0) {
            near.add(doc, (int) flags);
        }
    }

    private void loosen(int doc, long flags) {
        if (tally.meetAll() < LoosenPass.FEW) {
            loosen.take(segment, doc, flags);
        }
    }

    /// Which wishes a plant misses (lower half) and of which its facts are not known (upper half), one bit a wish.
    private long flags(int doc) {
        long flags = 0;
        List<WishTable> tables = need.tables();
        for (int bit = 0; bit < tables.size(); bit++) {
            long sum = tables.get(bit).of(segment, doc);
            flags |= (long) Rank.missed(sum) << bit | (long) Rank.unknown(sum) << bit + 32;
        }
        return flags;
    }

    private boolean takes(int doc) {
        for (Bits filter : filters) {
            if (!filter.get(doc)) {
                return false;
            }
        }
        return true;
    }

    Segment segment() {
        return segment;
    }

    TopPlants top() {
        return top;
    }

    Tally tally() {
        return tally;
    }

    FacetPass facets() {
        return facets;
    }

    LoosenPass loosen() {
        return loosen;
    }
}
