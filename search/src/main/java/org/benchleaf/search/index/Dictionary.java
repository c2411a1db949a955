package org.benchleaf.search.index;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.search.fit.FitJudge;
import org.benchleaf.search.fit.Occasion;
import org.benchleaf.search.fit.Outcome;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.name.TaxonName;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.need.Wish;

/// The distinct texts of one basis, numbered as they are met, and the outcome of each for a wish.
///
/// A wish is judged once for every distinct text, by the judge that judges plants; recent wishes are remembered.
/// Numbers are never given anew, so that a column read long ago stays right. Safe for many threads.
final class Dictionary {
    /// The number of plants of which nothing is known here.
    static final int NOTHING = 0;

    private static final int REMEMBERED_WISHES = 256;
    /// Wishes that have a basis look at neither.
    private static final PlantStock NO_STOCK = PlantStock.none(PlantKey.ofSerial(0));

    private static final YearWeek ANY_WEEK = new YearWeek(2000, 1);
    private static final Occasion NO_OCCASION = new Occasion(ANY_WEEK, ANY_WEEK, java.util.Optional.empty(), 1);

    private final Basis basis;
    private final FitJudge judge = new FitJudge();
    private final Map<String, Integer> codes = new HashMap<>();
    /// Of names: the numbers of each taxon and of those in it.
    private final Map<TaxonName, List<Integer>> ofTaxon = new HashMap<>();
    private final List<Basis.Known> values = new ArrayList<>();
    private final Map<Wish, short[]> outcomes = new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Wish, short[]> eldest) {
            return size() > REMEMBERED_WISHES;
        }
    };

    Dictionary(Basis basis) {
        this.basis = basis;
        values.add(Basis.Known.NOTHING);
    }

    /// The number of a text, given now when it is new.
    synchronized int code(String text) {
        return codes.computeIfAbsent(text, fresh -> {
            values.add(basis.read(fresh));
            int code = values.size() - 1;
            if (basis == Basis.SPECIES) {
                new TaxonName(fresh)
                        .lineage()
                        .forEach(taxon -> ofTaxon.computeIfAbsent(taxon, first -> new ArrayList<>())
                                .add(code));
            }
            return code;
        });
    }

    synchronized Basis.Known value(int code) {
        return values.get(code);
    }

    /// How many numbers are given.
    synchronized int size() {
        return values.size();
    }

    /// The judge's reason for a wish and a number.
    Reason reason(FitJudge by, Wish wish, int code) {
        Basis.Known value = value(code);
        return by.judge(wish, value.facts(), value.name(), NO_STOCK, NO_OCCASION);
    }

    /// The outcome of a wish for each number given so far.
    synchronized short[] outcomes(Wish wish) {
        short[] known = outcomes.getOrDefault(wish, new short[0]);
        if (known.length == values.size()) {
            return known;
        }
        short[] longer = Arrays.copyOf(known, values.size());
        for (int code = known.length; code < longer.length; code++) {
            longer[code] = (short) outcome(wish, values.get(code));
        }
        outcomes.put(wish, longer);
        return longer;
    }

    /// The outcome of a wish that tells few names from all others ([Basis#toldApart]).
    ///
    /// @param usual the outcome of every other name
    /// @param told those told apart that some plant has
    record FewNames(int usual, List<ToldApart> told) {}

    /// @param code number of a text
    /// @param outcome what the judge says of it
    record ToldApart(int code, int outcome) {}

    /// The same as [#outcomes] for a wish that tells few names apart: the judge is asked for these alone, and for one
    /// name that stands for all others.
    synchronized FewNames outcomesOf(Wish wish, Basis.Names names) {
        Map<Integer, Integer> told = new HashMap<>();
        // what is said of a species comes over what is said of its genus
        names.taxa().stream()
                .sorted(Comparator.comparingInt(taxon -> taxon.lineage().size()))
                .forEach(taxon -> {
                    int outcome = outcome(wish, new Basis.Known(Facts.NONE, taxon.asName()));
                    ofTaxon.getOrDefault(taxon, List.of()).forEach(code -> told.put(code, outcome));
                });
        names.texts().forEach(text -> {
            Integer code = codes.get(text);
            if (code != null) {
                told.put(code, outcome(wish, values.get(code)));
            }
        });
        return new FewNames(
                outcome(wish, Basis.Known.NOTHING),
                told.entrySet().stream()
                        .map(one -> new ToldApart(one.getKey(), one.getValue()))
                        .toList());
    }

    private int outcome(Wish wish, Basis.Known value) {
        Reason reason = judge.judge(wish, value.facts(), value.name(), NO_STOCK, NO_OCCASION);
        return Outcome.of(reason, value.facts());
    }
}
