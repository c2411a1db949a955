package org.benchleaf.bench.eval;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.service.OriginalFinder;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.search.substitute.Demand;
import org.benchleaf.search.substitute.Purpose;
import org.benchleaf.search.substitute.SubstituteFinder;
import org.benchleaf.search.substitute.SubstituteQuery;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;

/// What one list names instead of a plant, as far as the nursery has it, and how much of it is proposed.
///
/// @param target as the list names it
/// @param original the plant meant
/// @param stocked what the list names and the nursery has
record PublishedList(String target, OriginalFinder.Found original, List<Taxon> stocked) {
    private static final int AT = 10;

    /// @return empty when the program does not know the plant
    static Optional<PublishedList> of(String target, List<String> replacements, Stocked stocked, Benchleaf benchleaf) {
        try {
            return Optional.of(new PublishedList(
                    target,
                    benchleaf.originals().find(target),
                    replacements.stream()
                            .distinct()
                            .flatMap(text -> Taxon.of(text).stream())
                            .filter(stocked::has)
                            .toList()));
        } catch (Refusal unknown) {
            return Optional.empty();
        }
    }

    /// The first ten proposals, without a purpose, a site or a size; in stock now.
    List<PlantRecord> proposed(SubstituteFinder finder, YearWeek now) {
        return proposed(finder, original.plant(), original.wholeGenus(), Demand.ANY, now, AT);
    }

    static List<PlantRecord> proposed(
            SubstituteFinder finder, PlantRecord original, boolean wholeGenus, Demand demand, YearWeek now, int limit) {
        List<WeighedWish> others = wholeGenus
                ? List.of(WeighedWish.of(new Wish.NotOfGenus(original.name().genus())))
                : List.of();
        return finder
                .find(new SubstituteQuery(original, Purpose.NOT_SAID, demand, Optional.empty(), others, now, limit))
                .best()
                .stream()
                .map(one -> one.match().plant())
                .toList();
    }

    int found(List<PlantRecord> proposed, PlantNames names) {
        return (int) stocked.stream()
                .filter(taxon -> proposed.stream().anyMatch(plant -> taxon.holds(plant, names)))
                .count();
    }

    /// @return 0 to 1; of more than ten stocked taxa ten can be found
    double recall(List<PlantRecord> proposed, PlantNames names) {
        return stocked.isEmpty() ? 0 : Math.min(1, (double) found(proposed, names) / Math.min(AT, stocked.size()));
    }

    static String two(double number) {
        return String.format(Locale.ROOT, "%.2f", number);
    }
}
