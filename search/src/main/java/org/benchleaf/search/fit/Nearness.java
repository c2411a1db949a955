package org.benchleaf.search.fit;

import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.need.Reason.Shortfall;
import org.benchleaf.shared.need.Wish;

/// How near a missed wish is, 0 (nothing of it) to almost 1 (all but met).
///
/// The scales are ours, no source: sizes by the logarithm of their ratio (twice as tall is as far off as half), the
/// rest straight down to nothing at the given distance.
public final class Nearness {
    /// A plant four times too tall has nothing of the size asked for.
    private static final double FARTHEST_RATIO = Math.log(4);

    private static final double FARTHEST_HALF_ZONES = 6;
    private static final double FARTHEST_STEPS = 4;
    private static final double FARTHEST_MONTHS = 7;
    private static final double FARTHEST_PH_TENTHS = 30;
    /// About the CIEDE2000 between red and blue.
    private static final double FARTHEST_COLOR = 60;

    private Nearness() {}

    /// @return 0 to 1; 1 for met, 0.5 for unknown
    public static double degree(Reason reason) {
        return switch (reason) {
            case Reason.Met met -> 1;
            case Reason.Unknown unknown -> 0.5;
            case Reason.Missed(Wish wish, Reason.Seen seen, Shortfall by) ->
                switch (by) {
                    case Shortfall.Centimetres(int cm) -> ofSize(cm, askedCm(wish));
                    case Shortfall.HalfZones(int halves) -> down(Math.abs(halves), FARTHEST_HALF_ZONES);
                    case Shortfall.Steps(int steps) -> down(steps, FARTHEST_STEPS);
                    case Shortfall.PhTenths(int tenths) -> down(Math.abs(tenths), FARTHEST_PH_TENTHS);
                    case Shortfall.Months(int months) -> down(months, FARTHEST_MONTHS);
                    case Shortfall.OtherColor(double difference) -> down(difference, FARTHEST_COLOR);
                    case Shortfall.TooFew(int missing) -> {
                        int asked = wish instanceof Wish.InStock inStock ? inStock.count() : missing;
                        yield ofCount(asked - missing, asked);
                    }
                    case Shortfall.TooDear(long minor) -> {
                        long most = wish instanceof Wish.AtMostPrice(var price) ? price.minor() : 0;
                        yield ofPrice(most + minor, most);
                    }
                    case Shortfall.NotSo() -> 0;
                };
        };
    }

    static double ofCount(int free, int asked) {
        return (double) free / asked;
    }

    static double ofPrice(long price, long most) {
        return (double) most / price;
    }

    private static double ofSize(int offBy, int asked) {
        double ratio = (double) Math.max(1, asked + offBy) / asked;
        return down(Math.abs(Math.log(ratio)), FARTHEST_RATIO);
    }

    private static int askedCm(Wish wish) {
        return switch (wish) {
            case Wish.NoTallerThan(int cm) -> cm;
            case Wish.AtLeastTall(int cm) -> cm;
            case Wish.NoWiderThan(int cm) -> cm;
            case Wish.AtLeastWide(int cm) -> cm;
            case Wish.AtTenYears(var bound, int cm) -> cm;
            default -> 1;
        };
    }

    private static double down(double distance, double farthest) {
        return Math.max(0, 1 - distance / farthest);
    }
}
