package org.benchleaf.search;

import java.util.List;
import java.util.OptionalInt;
import org.benchleaf.shared.need.Need;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.need.WeighedWish;

/// Why a plant is an answer, or none.
///
/// @param match the plant, its stock and a reason for every wish
/// @param place its place among the answers, 1 for the best; empty when it is none or stands behind the first
/// thousand
/// @param among how many plants are ranked
public record Why(Match match, OptionalInt place, int among) {
    /// Places behind this one are not counted out.
    static final int FARTHEST_PLACE = 1000;

    /// The reasons that keep it out: fixed wishes that it is known to miss.
    public List<Reason> keptOutBy(Need need) {
        List<WeighedWish> wishes = need.wishes();
        return java.util.stream.IntStream.range(0, wishes.size())
                .filter(at -> wishes.get(at).fixed() && match.fit().reasons().get(at) instanceof Reason.Missed)
                .mapToObj(at -> match.fit().reasons().get(at))
                .toList();
    }
}
