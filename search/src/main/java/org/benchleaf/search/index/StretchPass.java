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

    /// @param filters what a document must pass to be ranked
    StretchPass(Segment segment, List<Bits> filters, NeedTables need, int limit) {
        this.segment = segment;
        this.filters = filters;
        this.need = need;
        this.top = new TopPlants(limit);
        this.tally = new Tally(need.tables().size());
        this.facets = need.newFacets();
        this.loosen = need.newLoosen();
    }

    /// @param start first document, a multiple of [#BLOCK]
    /// @param end behind the last
    StretchPass run(int start, int end) {
        int total = 0;
        long[] score = new long[BLOCK];
        long[] flag = new long[BLOCK];
        int[] clean = new int[BLOCK + 1];
        for (int from = start; from < end; from += BLOCK) {
            int count = Math.min(BLOCK, end - from);
            Arrays.fill(score, 0);
            Arrays.fill(flag, 0);
            for (WishTable table : need.tables()) {
                table.add(segment, from, count, score, flag);
            }
            int cleanCount = 0;
            for (int i = 0; i < count; i++) {
                if (((int) flag[i] & need.fixed()) == 0 && takes(from + i)) {
                    total++;
                    take(from + i, score[i], flag[i]);
                    clean[cleanCount] = from + i;
                    cleanCount += (int) flag[i] == 0 ? 1 : 0;
                }
            }
            facets.count(segment, from, count, clean, cleanCount, flag, this::takes);
        }
        tally.addTotal(total);
        return this;
    }

    private void take(int doc, long score, long flag) {
        int missed = (int) flag;
        if (missed == 0 || Long.bitCount(flag) <= 2) {
            tally.count(missed, (int) (flag >>> 32));
        }
        if (tally.meetAll() < LoosenPass.FEW) {
            loosen.take(segment, doc, flag);
        }
        int slot = segment.slots()[doc];
        byte[] standings = need.standings();
        long rank = score + (slot < standings.length ? standings[slot] : 0);
        if (top.mayTake(rank)) {
            top.offer(rank, segment.order()[doc]);
        }
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
