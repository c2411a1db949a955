package org.benchleaf.search.fit;

import java.util.Comparator;
import java.util.List;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.need.Reason;

/// How one plant meets a need: a reason for each wish, in the order asked, and where that puts it among others.
///
/// The order is total: more weight of wishes met, then nearness in the others, then standing, then merit, then
/// name, then key. Numbers are whole thousandths of a weight, so that adding them up in another order gives the
/// same rank.
///
/// @param plant whose fit it is
/// @param reasons one a wish, in the order asked
/// @param answers false when the plant is known to miss a fixed wish; it is then no answer
/// @param met weight of the wishes met, in thousandths
/// @param near how near the others are: weight times degree, in thousandths; a fact not known counts half;
///     wishes met add up to a tenth for being met well, and so do wishes that count by degree
/// @param standing whether it can be had
/// @param merit what it is worth whatever was asked, 0 to 31
/// @param order its name as sorted in lists
public record Fit(
        PlantKey plant,
        List<Reason> reasons,
        boolean answers,
        int met,
        int near,
        Standing standing,
        int merit,
        String order)
        implements Comparable<Fit> {
    private static final Comparator<Fit> BEST_FIRST = Comparator.comparing((Fit fit) -> !fit.answers)
            .thenComparing(Fit::met, Comparator.reverseOrder())
            .thenComparing(Fit::near, Comparator.reverseOrder())
            .thenComparing(Fit::standing)
            .thenComparing(Fit::merit, Comparator.reverseOrder())
            .thenComparing(Fit::order)
            .thenComparing(Fit::plant);

    public Fit {
        reasons = List.copyOf(reasons);
    }

    /// Whether every wish is known to be met.
    public boolean meetsAll() {
        return reasons.stream().allMatch(Reason.Met.class::isInstance);
    }

    /// Best first.
    @Override
    public int compareTo(Fit other) {
        return BEST_FIRST.compare(this, other);
    }
}
