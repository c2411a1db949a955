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
    private final Kinds kinds;
    private final int[] candidates = new int[BLOCK];
    private final long[] sums = new long[BLOCK];
    private final int[] docs = new int[BLOCK];
    private final int[] fewDocs = new int[BLOCK];
    private final int[] asideDocs = new int[BLOCK];
    private final int[] asideMissed = new int[BLOCK];
    private final long[] flags = new long[BLOCK];
    private final long[] scores = new long[BLOCK];
    private final NearlyAll near = new NearlyAll(BLOCK);

    /// @param filters what a document must pass to be ranked
    StretchPass(Segment segment, List<Bits> filters, NeedTables need, Kinds kinds, int limit) {
        this.segment = segment;
        this.filters = filters;
        this.need = need;
        this.top = new TopPlants(limit);
        this.tally = new Tally(need.tables().size());
        this.facets = need.newFacets();
        this.loosen = need.newLoosen();
        this.kinds = kinds;
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
            take(candidates(count));
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
        int[] order = segment.order();
        long least = top.least();
        for (int i = 0; i < count; i++) {
            // most plants are out already, whatever they are worth and can be had of them: that is not looked up then
            if (Rank.mostSorting(sums[i]) >= least) {
                int doc = docs[i];
                int slot = slots[doc];
                long rank = Rank.sorting(sums[i], slot < standings.length ? standings[slot] : 0, merits[doc]);
                if (rank >= least) {
                    top.offer(rank, order[doc]);
                    least = top.least();
                }
            }
        }
    }

    /// The plants that something counts.
    ///
    /// @return how many stand in `candidates`, as places in `docs`
    private int candidates(int count) {
        int found = 0;
        for (int i = 0; i < count; i++) {
            candidates[found] = i;
            found += -kinds.of(sums[i]) >>> 31;
        }
        return found;
    }

    /// Counts the plants that stand in `candidates`.
    private void take(int found) {
        int few = 0;
        int aside = 0;
        for (int i = 0; i < found; i++) {
            int doc = docs[candidates[i]];
            long sum = sums[candidates[i]];
            int kind = kinds.of(sum);
            if ((kind & Kinds.MISSES_NONE) != 0) {
                near.add(doc);
                countMissesNone(doc, kind);
            }
            if ((kind & Kinds.FEW_NOT_MET) != 0) {
                fewDocs[few++] = doc;
            }
            if ((kind & Kinds.ASIDE) != 0) {
                asideMissed[aside] = Rank.missed(sum);
                asideDocs[aside++] = doc;
            }
        }
        flags(fewDocs, few, -1);
        for (int i = 0; i < few; i++) {
            tally.count(flags[i]);
            loosen(fewDocs[i], flags[i]);
        }
        flags(asideDocs, aside, facets.own());
        for (int i = 0; i < aside; i++) {
            int bits = (int) flags[i];
            near.add(asideDocs[i], asideMissed[i] > Integer.bitCount(bits) ? bits | FacetPass.OTHERS : bits);
        }
    }

    private void countMissesNone(int doc, int kind) {
        if ((kind & Kinds.MEETS_ALL) != 0) {
            tally.countMeetsAll();
            loosen(doc, 0);
        } else {
            tally.countMissesNone();
        }
    }

    private void loosen(int doc, long flags) {
        if (tally.meetAll() < LoosenPass.FEW) {
            loosen.take(segment, doc, flags);
        }
    }

    /// Which wishes plants miss (lower half of `flags`) and of which their facts are not known (upper half), one bit
    /// a wish; wish by wish, which goes faster than plant by plant.
    ///
    /// @param some documents, of which the first `count` are meant
    /// @param asked the wishes looked at, as bits
    private void flags(int[] some, int count, int asked) {
        Arrays.fill(flags, 0, count, 0);
        List<WishTable> tables = need.tables();
        for (int bit = 0; bit < tables.size() && count > 0; bit++) {
            if ((asked >>> bit & 1) != 0) {
                Arrays.fill(scores, 0, count, 0);
                tables.get(bit).add(segment, some, count, scores);
                for (int i = 0; i < count; i++) {
                    flags[i] |= (long) Rank.missed(scores[i]) << bit | (long) Rank.unknown(scores[i]) << bit + 32;
                }
            }
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
