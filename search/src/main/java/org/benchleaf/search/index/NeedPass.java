package org.benchleaf.search.index;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.lucene.util.Bits;
import org.apache.lucene.util.FixedBitSet;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.search.fit.Occasion;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.Need;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.plant.LifeForm;

/// One pass over all plants of a snapshot for one need: ranks, counts, and keeps the best. Used by one thread,
/// once.
final class NeedPass {
    /// A rank, high bits first: weight met (20 bits), nearness (20 bits), standing (2 bits).
    static final int MET_SHIFT = 22;

    static final int NEAR_SHIFT = 2;
    /// Small enough for the running sums to stay in the nearest cache.
    private static final int BLOCK = 1024;

    private final Snapshot snapshot;
    private final Dictionaries dictionaries;
    private final byte[] standings;
    private final int fixed;
    private final int limit;
    private final List<WishTable> tables = new ArrayList<>();
    private final Tally tally;
    private int[] formCounts = new int[64];

    NeedPass(Snapshot snapshot, Dictionaries dictionaries, Need need, YearWeek week, int limit) {
        this.snapshot = snapshot;
        this.dictionaries = dictionaries;
        this.standings = snapshot.stock().standings(StockColumns.week(week));
        this.limit = limit;
        Occasion occasion = Occasion.of(need, week);
        List<WeighedWish> wishes = need.wishes();
        tally = new Tally(wishes.size());
        int fixedBits = 0;
        for (int bit = 0; bit < wishes.size(); bit++) {
            tables.add(WishTable.of(wishes.get(bit), bit, occasion, dictionaries, snapshot.stock()));
            fixedBits |= wishes.get(bit).fixed() ? 1 << bit : 0;
        }
        fixed = fixedBits;
    }

    /// @param allowed which documents of each segment may be ranked; all when empty
    Proposal run(Optional<List<FixedBitSet>> allowed) throws IOException {
        List<Ranked> best = new ArrayList<>();
        for (int number = 0; number < snapshot.segments().size(); number++) {
            int segmentNumber = number;
            Segment segment = snapshot.segments().get(number);
            List<Bits> filters = new ArrayList<>();
            segment.live().ifPresent(filters::add);
            allowed.ifPresent(bits -> filters.add(bits.get(segmentNumber)));
            TopPlants top = rank(segment, filters);
            for (int i = 0; i < top.size(); i++) {
                best.add(new Ranked(top.rank(i), segment.nameAt(top.place(i))));
            }
        }
        best.sort(Ranked.BEST_FIRST);
        List<PlantKey> keys = best.stream()
                .limit(limit)
                .map(ranked -> PlantDocument.keyIn(ranked.order()))
                .toList();
        return new Proposal(snapshot.revision(), tally, lifeForms(), keys);
    }

    private TopPlants rank(Segment segment, List<Bits> filters) {
        TopPlants top = new TopPlants(limit);
        boolean all = filters.isEmpty();
        int total = 0;
        long[] score = new long[BLOCK];
        long[] flag = new long[BLOCK];
        for (int from = 0; from < segment.size(); from += BLOCK) {
            int count = Math.min(BLOCK, segment.size() - from);
            Arrays.fill(score, 0);
            Arrays.fill(flag, 0);
            for (WishTable table : tables) {
                table.add(segment, from, count, score, flag);
            }
            for (int i = 0; i < count; i++) {
                if (((int) flag[i] & fixed) == 0 && (all || passes(filters, from + i))) {
                    total++;
                    take(segment, from + i, score[i], flag[i], top);
                }
            }
        }
        tally.addTotal(total);
        return top;
    }

    private void take(Segment segment, int doc, long score, long flag, TopPlants top) {
        int missed = (int) flag;
        if (missed == 0) {
            countForm(segment.column(Basis.LIFE_FORM).code(doc));
        }
        if (missed == 0 || Long.bitCount(flag) <= 2) {
            tally.count(missed, (int) (flag >>> 32));
        }
        int slot = segment.slots()[doc];
        long rank = score + (slot < standings.length ? standings[slot] : 0);
        if (top.mayTake(rank)) {
            top.offer(rank, segment.order()[doc]);
        }
    }

    private void countForm(int code) {
        if (code >= formCounts.length) {
            formCounts = Arrays.copyOf(formCounts, code * 2);
        }
        formCounts[code]++;
    }

    private static boolean passes(List<Bits> filters, int doc) {
        for (Bits filter : filters) {
            if (!filter.get(doc)) {
                return false;
            }
        }
        return true;
    }

    private Map<LifeForm, Integer> lifeForms() {
        Map<LifeForm, Integer> counts = new EnumMap<>(LifeForm.class);
        for (int code = 0; code < formCounts.length; code++) {
            if (formCounts[code] > 0) {
                int more = formCounts[code];
                dictionaries
                        .of(Basis.LIFE_FORM)
                        .value(code)
                        .facts()
                        .value(Attributes.LIFE_FORM)
                        .ifPresent(forms -> forms.forEach(form -> counts.merge(form, more, Integer::sum)));
            }
        }
        return counts;
    }

    /// A plant among the best of its segment.
    private record Ranked(long rank, String order) {
        static final Comparator<Ranked> BEST_FIRST =
                Comparator.comparingLong(Ranked::rank).reversed().thenComparing(Ranked::order);
    }
}
