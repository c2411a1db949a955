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
    private final int mostNotMet;
    private final int mostOwn;
    private final int[] candidates = new int[BLOCK];
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
        this.mostNotMet = Math.max(2, loosen.mostNotMet());
        this.mostOwn = facets.mostOwn();
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
            rank(count);
            near.clear();
            int found = candidates(count);
            for (int i = 0; i < found; i++) {
                take(docs[candidates[i]], sums[candidates[i]]);
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
            long sum = sums[i];
            docs[chosen] = from + i;
            sums[chosen] = sum;
            // one more when the difference is negative: half of all plants go, which no processor can foretell
            chosen += (int) (sum - Rank.MISSES_FIXED >>> 63);
        }
        return filters.isEmpty() ? chosen : filtered(chosen);
    }

    private int filtered(int count) {
        int kept = 0;
        for (int i = 0; i < count; i++) {
            if (takes(docs[i])) {
                docs[kept] = docs[i];
                sums[kept++] = sums[i];
            }
        }
        return kept;
    }

    private void rank(int count) {
        int[] slots = segment.slots();
        byte[] merits = segment.merits();
        byte[] standings = need.standings();
        for (int i = 0; i < count; i++) {
            int doc = docs[i];
            int slot = slots[doc];
            long rank = Rank.sorting(sums[i], slot < standings.length ? standings[slot] : 0, merits[doc]);
            if (top.mayTake(rank)) {
                top.offer(rank, segment.order()[doc]);
            }
        }
    }

    /// The plants that come so near to meeting all that something counts them.
    ///
    /// @return how many stand in `candidates`, as places in `docs`
    private int candidates(int count) {
        int found = 0;
        boolean counted = need.ownIsCounted();
        for (int i = 0; i < count; i++) {
            int missed = Rank.missed(sums[i]);
            int notMet = missed + Rank.unknown(sums[i]);
            int others = counted ? missed - Rank.own(sums[i]) : 0;
            candidates[found] = i;
            found += ((missed - mostOwn - 1 & others - 1) | notMet - mostNotMet - 1) >>> 31;
        }
        return found;
    }

    private void take(int doc, long sum) {
        int missed = Rank.missed(sum);
        int notMet = missed + Rank.unknown(sum);
        if (missed == 0) {
            near.add(doc);
        }
        if (notMet == 0) {
            tally.countMeetsAll();
            loosen(doc, 0);
        } else {
            if (missed == 0) {
                tally.countMissesNone();
            }
            if (notMet <= mostNotMet) {
                long flags = flags(doc);
                tally.count(flags);
                loosen(doc, flags);
            }
        }
        if (missed > 0 && missed <= mostOwn && (!need.ownIsCounted() || missed == Rank.own(sum))) {
            near.add(doc, missedOf(doc, missed));
        }
    }

    private void loosen(int doc, long flags) {
        if (tally.meetAll() < LoosenPass.FEW) {
            loosen.take(segment, doc, flags);
        }
    }

    /// The wishes missed among those that facets set aside, as bits, and [FacetPass#OTHERS] when it misses others.
    private int missedOf(int doc, int missed) {
        int bits = 0;
        for (int own = facets.own(); own != 0; own &= own - 1) {
            int bit = Integer.numberOfTrailingZeros(own);
            bits |= Rank.missed(need.tables().get(bit).of(segment, doc)) << bit;
        }
        return missed > Integer.bitCount(bits) ? bits | FacetPass.OTHERS : bits;
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
