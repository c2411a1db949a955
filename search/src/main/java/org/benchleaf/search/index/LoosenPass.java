package org.benchleaf.search.index;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.benchleaf.search.fit.FitJudge;
import org.benchleaf.search.fit.Loosen;
import org.benchleaf.search.fit.Loosening;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.Need;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;

/// Finds by how much one wish must be loosened to bring more plants that meet them all, when few do: counted
/// from the plants that miss nothing else, never guessed.
final class LoosenPass {
    /// With so many plants that meet all nobody asks what to loosen. Ours, no source.
    static final int FEW = 20;

    private final List<WeighedWish> wishes;
    private final Dictionaries dictionaries;
    private final Basis[] bases;
    private final int[][] histograms;
    private final StockLoosening stock;
    private final FitJudge judge = new FitJudge();

    LoosenPass(Need need, Dictionaries dictionaries, StockColumns stock, YearWeek week) {
        this.wishes = need.wishes();
        this.dictionaries = dictionaries;
        this.stock = new StockLoosening(need, stock, week);
        this.bases = new Basis[wishes.size()];
        this.histograms = new int[wishes.size()][];
        Arrays.fill(histograms, new int[0]);
        for (int bit = 0; bit < bases.length; bit++) {
            Optional<Basis> basis = Basis.of(wishes.get(bit).wish());
            if (basis.isPresent()
                    && !wishes.get(bit).fixed()
                    && Loosen.byDegrees(wishes.get(bit).wish())) {
                bases[bit] = basis.get();
                histograms[bit] = new int[dictionaries.of(basis.get()).size()];
            }
        }
    }

    /// So many wishes may be not met together by plants to be taken note of.
    int mostNotMet() {
        return Math.max(1, stock.wishes());
    }

    /// Takes note of a plant.
    ///
    /// @param flag its flags: missed below, unknown above
    void take(Segment segment, int doc, long flag) {
        long facts = flag & stock.otherFlags();
        if (facts == 0) {
            stock.take(segment.slots()[doc]);
        }
        if (Long.bitCount(flag) == 1 && flag == (int) flag) {
            int bit = Long.numberOfTrailingZeros(flag);
            int[] histogram = histograms[bit];
            if (histogram.length > 0) {
                histogram[segment.column(bases[bit]).code(doc)]++;
            }
        }
    }

    /// Adds what another took note of.
    void add(LoosenPass other) {
        for (int bit = 0; bit < histograms.length; bit++) {
            int common = Math.min(histograms[bit].length, other.histograms[bit].length);
            for (int code = 0; code < common; code++) {
                histograms[bit][code] += other.histograms[bit][code];
            }
        }
        stock.add(other.stock);
    }

    /// The loosenings, in the order of the wishes; the nearest that brings any, and the nearest that brings
    /// half of what that wish alone keeps away.
    List<Loosening> found(int meetAll) {
        if (meetAll >= FEW) {
            return List.of();
        }
        List<Loosening> found = new ArrayList<>();
        for (int bit = 0; bit < histograms.length; bit++) {
            if (histograms[bit].length > 0) {
                found.addAll(ofFacts(bit));
            }
        }
        found.addAll(stock.found(meetAll));
        found.sort(Comparator.comparingInt(loosening -> position(loosening.wish())));
        return found;
    }

    private int position(Wish wish) {
        for (int bit = 0; bit < wishes.size(); bit++) {
            if (wishes.get(bit).wish().equals(wish)) {
                return bit;
            }
        }
        return wishes.size();
    }

    private List<Loosening> ofFacts(int bit) {
        Wish wish = wishes.get(bit).wish();
        Dictionary dictionary = dictionaries.of(bases[bit]);
        Map<Long, Step> steps = new TreeMap<>();
        int total = 0;
        for (int code = 0; code < histograms[bit].length; code++) {
            int plants = histograms[bit][code];
            if (plants > 0) {
                Optional<Loosen> loosen = Loosen.toMeet(dictionary.reason(judge, wish, code));
                if (loosen.isPresent()) {
                    total += plants;
                    steps.merge(loosen.get().amount(), new Step(loosen.get().wish(), plants), Step::and);
                }
            }
        }
        List<Loosening> found = new ArrayList<>();
        int sum = 0;
        for (Step step : steps.values()) {
            boolean first = sum == 0;
            boolean passesHalf = sum * 2 < total && (sum + step.plants) * 2 >= total;
            sum += step.plants;
            if (first || passesHalf) {
                found.add(new Loosening(wish, step.wish, brought(bit, step.wish)));
            }
        }
        return found;
    }

    /// What the loosened wish brings by the judge's word: a little more than the step, for sizes are
    /// approximate.
    private int brought(int bit, Wish loosened) {
        Dictionary dictionary = dictionaries.of(bases[bit]);
        int plants = 0;
        for (int code = 0; code < histograms[bit].length; code++) {
            if (histograms[bit][code] > 0 && dictionary.reason(judge, loosened, code) instanceof Reason.Met) {
                plants += histograms[bit][code];
            }
        }
        return plants;
    }

    private record Step(Wish wish, int plants) {
        Step and(Step other) {
            return new Step(wish, plants + other.plants);
        }
    }
}
