package org.benchleaf.search.index;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.apache.lucene.util.Bits;
import org.apache.lucene.util.FixedBitSet;
import org.benchleaf.search.facet.Facet;
import org.benchleaf.search.fit.Loosening;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.Need;
import org.jspecify.annotations.Nullable;

/// One pass over all plants of a snapshot for one need: ranks, counts, and keeps the best. Large catalogs are
/// gone through in stretches, by as many threads as there are processors.
final class NeedPass {
    /// Shorter stretches cost more in handing over than they save.
    private static final int STRETCH = 32 * StretchPass.BLOCK;

    private final Snapshot snapshot;
    private final NeedTables need;
    private final int limit;

    NeedPass(Snapshot snapshot, Dictionaries dictionaries, Need need, Set<Facet> facets, YearWeek week, int limit) {
        this.snapshot = snapshot;
        this.need = new NeedTables(snapshot.stock(), dictionaries, need, facets, week);
        this.limit = limit;
    }

    /// @param allowed which documents of each segment may be ranked; all when empty
    Proposal run(Optional<List<FixedBitSet>> allowed) throws IOException {
        FacetPass facets = need.newFacets();
        LoosenPass loosen = need.newLoosen();
        Kinds kinds = new Kinds(Math.max(2, loosen.mostNotMet()), facets.mostOwn(), need.ownIsCounted());
        List<Stretch> stretches = stretches(allowed);
        Stream<Stretch> some = stretches.size() > 2 ? stretches.parallelStream() : stretches.stream();
        List<StretchPass> passes = some.map(
                        stretch -> new StretchPass(stretch.segment(), stretch.filters(), need, kinds, limit)
                                .run(stretch.from(), stretch.to()))
                .toList();
        Tally tally = new Tally(need.tables().size());
        for (StretchPass pass : passes) {
            tally.add(pass.tally());
            facets.add(pass.facets());
            loosen.add(pass.loosen());
        }
        CompletableFuture<List<Loosening>> loosenings =
                CompletableFuture.supplyAsync(() -> loosen.found(tally.meetAll()));
        List<PlantKey> best = best(passes);
        return new Proposal(snapshot.revision(), tally, facets.counted(), loosenings.join(), best);
    }

    private List<Stretch> stretches(Optional<List<FixedBitSet>> allowed) {
        List<Stretch> stretches = new ArrayList<>();
        for (int number = 0; number < snapshot.segments().size(); number++) {
            int segmentNumber = number;
            Segment segment = snapshot.segments().get(number);
            List<Bits> filters = new ArrayList<>();
            segment.live().ifPresent(filters::add);
            allowed.ifPresent(bits -> filters.add(bits.get(segmentNumber)));
            for (int from = 0; from < segment.size(); from += STRETCH) {
                stretches.add(new Stretch(segment, filters, from, Math.min(segment.size(), from + STRETCH)));
            }
        }
        return stretches;
    }

    /// The best of all stretches; names are looked up only where a rank may be among them.
    private List<PlantKey> best(List<StretchPass> passes) {
        long[] ranks = passes.stream()
                .flatMapToLong(pass -> pass.top().ranks())
                .sorted()
                .toArray();
        long least = ranks.length > limit ? ranks[ranks.length - limit] : Long.MIN_VALUE;
        List<Ranked> best = new ArrayList<>();
        for (StretchPass pass : passes) {
            for (int i = 0; i < pass.top().size(); i++) {
                if (pass.top().rank(i) >= least) {
                    best.add(new Ranked(
                            pass.top().rank(i), pass.segment(), pass.top().place(i)));
                }
            }
        }
        best.sort(Comparator.comparingLong((Ranked ranked) -> ranked.rank)
                .reversed()
                .thenComparing(NeedPass::byName));
        return best.stream()
                .limit(limit)
                .map(ranked -> ranked.segment.keyAt(ranked.place))
                .toList();
    }

    /// Within a segment places say it; only plants of two segments whose names begin alike need their names to be
    /// read.
    private static int byName(Ranked one, Ranked other) {
        if (one.segment == other.segment) {
            return Integer.compare(one.place, other.place);
        }
        int byBeginning = Long.compareUnsigned(one.beginning(), other.beginning());
        return byBeginning == 0 ? one.name().compareTo(other.name()) : byBeginning;
    }

    /// A part of a segment.
    private record Stretch(Segment segment, List<Bits> filters, int from, int to) {}

    /// A plant among the best of its stretch. For one thread.
    private static final class Ranked {
        private final long rank;
        private final Segment segment;
        private final int place;
        private @Nullable String name;

        Ranked(long rank, Segment segment, int place) {
            this.rank = rank;
            this.segment = segment;
            this.place = place;
        }

        long beginning() {
            return segment.beginnings()[place];
        }

        /// Read once, though many plants of the same rank are compared.
        String name() {
            String known = name;
            if (known == null) {
                try {
                    known = segment.namesAt(new int[] {place}).getFirst();
                } catch (IOException failed) {
                    throw new UncheckedIOException(failed);
                }
                name = known;
            }
            return known;
        }
    }
}
