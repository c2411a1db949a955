package org.benchleaf.search.index;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
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

    /// @param own whether a facet sets the wish aside
    static WishTable of(
            WeighedWish weighed, boolean own, Occasion occasion, Dictionaries dictionaries, StockColumns stock) {
        Optional<Basis> basis = Basis.of(weighed.wish());
        if (basis.isEmpty()) {
            StockWish wish = StockWish.of(weighed.wish(), occasion, stock)
                    .orElseThrow(() -> new IllegalStateException("a wish without a basis: " + weighed));
            return wish instanceof StockWish.Enough enough && enough.asked() <= OfCounts.MOST
                    ? OfCounts.of(enough, weighed, own)
                    : new OfStock(wish, weighed, own);
        }
        Dictionary dictionary = dictionaries.of(basis.get());
        Optional<Basis.Names> apart = Basis.toldApart(weighed.wish());
        if (apart.isPresent()) {
            Dictionary.FewNames names = dictionary.outcomesOf(weighed.wish(), apart.get());
            return names.told().size() <= OfNames.MOST
                    ? OfNames.of(basis.get(), names, weighed, own)
                    : OfManyNames.of(basis.get(), names, weighed, own);
        }
        return new OfFacts(basis.get(), scores(dictionary.outcomes(weighed.wish()), weighed, own));
    }

    /// What a wish adds for each number of a dictionary; worked out once for all that come to the same.
    private static long[] scores(short[] outcomes, WeighedWish weighed, boolean own) {
        long[] byOutcome = new long[Outcome.END];
        long[] scores = new long[outcomes.length];
        for (int code = 0; code < outcomes.length; code++) {
            int outcome = outcomes[code];
            if (byOutcome[outcome] == 0) {
                byOutcome[outcome] = Rank.of(outcome, weighed, own);
            }
            scores[code] = byOutcome[outcome];
        }
        return scores;
    }

    /// The same tables, those that look at the same facts added up to one: a need of thirty wishes, as substitutes
    /// have, then costs little more than its different facts.
    static List<WishTable> joined(List<WishTable> tables) {
        Map<Basis, long[]> sums = new EnumMap<>(Basis.class);
        List<WishTable> joined = new ArrayList<>();
        for (WishTable table : tables) {
            switch (table) {
                case OfFacts(Basis basis, long[] scores) -> sums.merge(basis, scores, WishTable::added);
                case OfNames names -> joined.add(names);
                case OfManyNames names -> joined.add(names);
                case OfCounts counts -> joined.add(counts);
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

    /// A wish about names that tells few of them from all others.
    ///
    /// @param usual what it adds to all others
    /// @param codes numbers of those told apart
    /// @param scores what it adds to them
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record OfNames(Basis basis, long usual, int[] codes, long[] scores) implements WishTable {
        /// Of more names each is looked up: every name told apart is a pass of its own.
        static final int MOST = 8;

        static OfNames of(Basis basis, Dictionary.FewNames names, WeighedWish weighed, boolean own) {
            int[] codes = new int[names.told().size()];
            long[] scores = new long[codes.length];
            for (int at = 0; at < codes.length; at++) {
                codes[at] = names.told().get(at).code();
                scores[at] = Rank.of(names.told().get(at).outcome(), weighed, own);
            }
            return new OfNames(basis, Rank.of(names.usual(), weighed, own), codes, scores);
        }

        @Override
        public void addRun(Segment segment, int from, int count, long[] sums) {
            for (int i = 0; i < count; i++) {
                sums[i] += usual;
            }
            for (int at = 0; at < codes.length; at++) {
                segment.column(basis).addRunWhere(from, count, codes[at], scores[at] - usual, sums);
            }
        }

        @Override
        public void add(Segment segment, int[] docs, int count, long[] sums) {
            for (int i = 0; i < count; i++) {
                sums[i] += usual;
            }
            for (int at = 0; at < codes.length; at++) {
                segment.column(basis).addWhere(docs, count, codes[at], scores[at] - usual, sums);
            }
        }

        @Override
        public long of(Segment segment, int doc) {
            int code = segment.column(basis).code(doc);
            for (int at = 0; at < codes.length; at++) {
                if (codes[at] == code) {
                    return scores[at];
                }
            }
            return usual;
        }
    }

    /// A wish about names that tells some hundreds of them from all others: a bit says whether a name is one of them,
    /// for a score of each of a million names would be made anew for every answer.
    ///
    /// @param usual what it adds to all others
    /// @param told which numbers are told apart
    /// @param codes these numbers, ascending
    /// @param scores what it adds to them
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record OfManyNames(Basis basis, long usual, BitSet told, int[] codes, long[] scores) implements WishTable {
        static OfManyNames of(Basis basis, Dictionary.FewNames names, WeighedWish weighed, boolean own) {
            List<Dictionary.ToldApart> inOrder = names.told().stream()
                    .sorted(Comparator.comparingInt(Dictionary.ToldApart::code))
                    .toList();
            BitSet told = new BitSet();
            inOrder.forEach(one -> told.set(one.code()));
            return new OfManyNames(
                    basis,
                    Rank.of(names.usual(), weighed, own),
                    told,
                    inOrder.stream().mapToInt(Dictionary.ToldApart::code).toArray(),
                    inOrder.stream()
                            .mapToLong(one -> Rank.of(one.outcome(), weighed, own))
                            .toArray());
        }

        @Override
        public void addRun(Segment segment, int from, int count, long[] sums) {
            Column column = segment.column(basis);
            for (int i = 0; i < count; i++) {
                sums[i] += ofCode(column.code(from + i));
            }
        }

        @Override
        public void add(Segment segment, int[] docs, int count, long[] sums) {
            Column column = segment.column(basis);
            for (int i = 0; i < count; i++) {
                sums[i] += ofCode(column.code(docs[i]));
            }
        }

        @Override
        public long of(Segment segment, int doc) {
            return ofCode(segment.column(basis).code(doc));
        }

        private long ofCode(int code) {
            return told.get(code) ? scores[Arrays.binarySearch(codes, code)] : usual;
        }
    }

    /// A wish for so many: one look-up by how many there are.
    ///
    /// @param most the most of one item by slot
    /// @param scores by count, up to the count asked for
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record OfCounts(int[] most, long[] scores) implements WishTable {
        /// Larger counts are worked out plant by plant.
        static final int MOST = 10_000;

        static OfCounts of(StockWish.Enough wish, WeighedWish weighed, boolean own) {
            long[] scores = new long[wish.asked() + 1];
            for (int count = 0; count < scores.length; count++) {
                scores[count] = Rank.of(Outcome.ofCount(count, wish.asked()), weighed, own);
            }
            return new OfCounts(wish.most(), scores);
        }

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
            int slot = segment.slots()[doc];
            return scores[slot < most.length ? Math.min(most[slot], scores.length - 1) : 0];
        }
    }

    /// A wish about stock or price that has to be worked out.
    record OfStock(StockWish wish, WeighedWish weighed, boolean own) implements WishTable {
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
            return Rank.of(wish.outcome(segment.slots()[doc]), weighed, own);
        }
    }
}
