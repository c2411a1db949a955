package org.benchleaf.search.index;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.search.facet.Facet;
import org.benchleaf.search.facet.FacetCount;
import org.benchleaf.search.fit.Occasion;
import org.benchleaf.search.fit.Outcome;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;

/// Counts the values of facets while a pass goes over the plants: first how many plants hold each number of a
/// column, afterwards, from the judge's outcomes, how many that is of each value.
final class FacetPass {
    /// Stands among the bits of wishes for all that no facet sets aside; a need holds fewer wishes than bits.
    static final int OTHERS = 1 << 31;

    private final Dictionaries dictionaries;
    private final List<OfFacts> facts = new ArrayList<>();
    private final Optional<SizeCounts> sizes;
    private final int sizesOwn;

    FacetPass(
            Set<Facet> facets,
            List<WeighedWish> wishes,
            Dictionaries dictionaries,
            StockColumns stock,
            Occasion occasion) {
        this.dictionaries = dictionaries;
        for (Facet facet : facets) {
            if (facet != Facet.SIZE) {
                Basis basis =
                        Basis.of(facet.choices().values().iterator().next()).orElseThrow();
                // deer and rabbit stand in columns of their own
                for (Basis each : facet == Facet.LEFT_ALONE_BY ? List.of(Basis.DEER, Basis.RABBIT) : List.of(basis)) {
                    facts.add(new OfFacts(
                            facet,
                            each,
                            own(facet, wishes),
                            new int[dictionaries.of(each).size()]));
                }
            }
        }
        sizes = facets.contains(Facet.SIZE) ? Optional.of(new SizeCounts(stock, occasion)) : Optional.empty();
        sizesOwn = own(Facet.SIZE, wishes);
    }

    /// The wishes that are set aside for a facet, as bits.
    private static int own(Facet facet, List<WeighedWish> wishes) {
        int own = 0;
        for (int bit = 0; bit < wishes.size(); bit++) {
            own |= facet.isAbout(wishes.get(bit).wish()) ? 1 << bit : 0;
        }
        return own;
    }

    /// All wishes that any of these facets sets aside, as bits.
    static int ownOfAny(Set<Facet> facets, List<WeighedWish> wishes) {
        int own = 0;
        for (Facet facet : facets) {
            own |= own(facet, wishes);
        }
        return own;
    }

    /// All wishes that are set aside for one facet or another, as bits.
    int own() {
        int own = sizes.isPresent() ? sizesOwn : 0;
        for (OfFacts facet : facts) {
            own |= facet.own;
        }
        return own;
    }

    /// The most wishes that are set aside for one facet: a plant that misses no others counts there.
    int mostOwn() {
        int most = sizes.isPresent() ? Integer.bitCount(sizesOwn) : 0;
        for (OfFacts facet : facts) {
            most = Math.max(most, Integer.bitCount(facet.own));
        }
        return most;
    }

    /// Counts the plants of a block.
    void count(Segment segment, NearlyAll plants) {
        for (OfFacts facet : facts) {
            Column column = segment.column(facet.basis);
            column.count(plants.clean(), plants.cleanCount(), facet.histogram);
            for (int i = 0; i < plants.count() && facet.own != 0; i++) {
                if ((plants.missed(i) & ~facet.own) == 0) {
                    facet.histogram[column.code(plants.doc(i))]++;
                }
            }
        }
        sizes.ifPresent(counts -> count(segment, plants, counts));
    }

    private void count(Segment segment, NearlyAll plants, SizeCounts counts) {
        for (int i = 0; i < plants.cleanCount(); i++) {
            counts.count(segment.slots()[plants.clean()[i]]);
        }
        for (int i = 0; i < plants.count(); i++) {
            if ((plants.missed(i) & ~sizesOwn) == 0) {
                counts.count(segment.slots()[plants.doc(i)]);
            }
        }
    }

    /// Adds what another counted of other plants.
    void add(FacetPass other) {
        for (int facet = 0; facet < facts.size(); facet++) {
            int[] histogram = facts.get(facet).histogram;
            int[] more = other.facts.get(facet).histogram;
            // numbers given meanwhile belong to later states
            for (int code = 0; code < Math.min(histogram.length, more.length); code++) {
                histogram[code] += more[code];
            }
        }
        sizes.ifPresent(counts -> other.sizes.ifPresent(counts::add));
    }

    /// The counts of all facets, values without plants left out; in the order of the vocabulary, sizes most
    /// first.
    Map<Facet, List<FacetCount>> counted() {
        Map<Facet, List<FacetCount>> counted = new EnumMap<>(Facet.class);
        for (OfFacts facet : facts) {
            List<FacetCount> values = counted.computeIfAbsent(facet.facet, fresh -> new ArrayList<>());
            int[] codes = used(facet.histogram);
            for (Map.Entry<String, Wish> value : facet.facet.choices().entrySet()) {
                if (Basis.of(value.getValue()).equals(Optional.of(facet.basis))) {
                    int plants =
                            plants(facet, codes, dictionaries.of(facet.basis).outcomes(value.getValue()));
                    if (plants > 0) {
                        values.add(new FacetCount(value.getKey(), plants));
                    }
                }
            }
        }
        sizes.ifPresent(counts -> counted.put(Facet.SIZE, counts.counted()));
        return counted;
    }

    private static int plants(OfFacts facet, int[] codes, short[] outcomes) {
        int plants = 0;
        for (int code : codes) {
            plants += Outcome.isMet(outcomes[code]) ? facet.histogram[code] : 0;
        }
        return plants;
    }

    private static int[] used(int[] histogram) {
        int[] codes = new int[histogram.length];
        int used = 0;
        for (int code = 0; code < histogram.length; code++) {
            if (histogram[code] > 0) {
                codes[used++] = code;
            }
        }
        return java.util.Arrays.copyOf(codes, used);
    }

    /// @param own wishes set aside, as bits
    /// @param histogram plants by number of the column
    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record OfFacts(Facet facet, Basis basis, int own, int[] histogram) {}
}
