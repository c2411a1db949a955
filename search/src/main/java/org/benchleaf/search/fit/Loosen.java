package org.benchleaf.search.fit;

import java.time.Month;
import java.util.Optional;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.need.Reason.Shortfall;
import org.benchleaf.shared.need.Wish;

/// The wish of the same kind that asks just so much less that a plant which missed it meets it.
///
/// @param wish asks less than the one missed
/// @param amount how much less, in its own unit (cm, months); 1 or more
public record Loosen(Wish wish, long amount) {
    /// Whether wishes of this kind can be loosened by degrees, judged by facts alone. A site cannot: its light,
    /// soil and winters are what they are.
    public static boolean byDegrees(Wish wish) {
        return wish instanceof Wish.NoTallerThan
                || wish instanceof Wish.AtLeastTall
                || wish instanceof Wish.NoWiderThan
                || wish instanceof Wish.AtLeastWide
                || wish instanceof Wish.AtTenYears
                || wish instanceof Wish.Shows shows && shows.months().isPresent();
    }

    /// @return empty when it cannot be loosened, or when it misses by something else, as a color
    public static Optional<Loosen> toMeet(Reason reason) {
        return reason instanceof Reason.Missed(Wish wish, Reason.Seen seen, Shortfall by) && byDegrees(wish)
                ? switch (by) {
                    case Shortfall.Centimetres(int cm) -> Optional.of(new Loosen(moved(wish, cm), Math.abs((long) cm)));
                    case Shortfall.Months(int months) -> Optional.of(new Loosen(widened(wish, months), months));
                    default -> Optional.empty();
                }
                : Optional.empty();
    }

    private static Wish moved(Wish wish, int cm) {
        return switch (wish) {
            case Wish.NoTallerThan(int most) -> new Wish.NoTallerThan(most + cm);
            case Wish.AtLeastTall(int least) -> new Wish.AtLeastTall(least + cm);
            case Wish.NoWiderThan(int most) -> new Wish.NoWiderThan(most + cm);
            case Wish.AtLeastWide(int least) -> new Wish.AtLeastWide(least + cm);
            case Wish.AtTenYears(var bound, int length) -> new Wish.AtTenYears(bound, length + cm);
            default -> throw new IllegalArgumentException("not a length: " + wish);
        };
    }

    private static Wish widened(Wish wish, int months) {
        Wish.Shows shows = (Wish.Shows) wish;
        MonthSet asked = shows.months().orElse(MonthSet.NONE);
        MonthSet wider = asked;
        for (Month month : Month.values()) {
            if (asked.contains(month)) {
                wider = wider.or(MonthSet.between(month.minus(months), month.plus(months)));
            }
        }
        return new Wish.Shows(shows.season(), Optional.of(months >= 6 ? MonthSet.ALL : wider), shows.color());
    }
}
