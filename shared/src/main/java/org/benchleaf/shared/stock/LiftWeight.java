package org.benchleaf.shared.stock;

import java.util.Optional;

/// About how heavy one plant of a size is to lift: an estimate that varies with soil moisture, never a
/// promise.
///
/// @param pounds rounded to 25 lb
/// @param ball whether it comes with a ball of soil, not in a container
public record LiftWeight(int pounds, boolean ball) {
    /// The most that one person may lift in the best posture: load constant of the NIOSH equation, 23 kg;
    /// from memory.
    public static final int ALONE_POUNDS = 51;

    private static final int STEP = 25;
    private static final double CUBIC_INCHES_A_CUBIC_FOOT = 1728;
    /// A ball fills about two thirds of its cylinder, at 110 lb a cubic foot of moist soil; computed,
    /// within 20 % of a grower's table (bluegrassfarms.net/faq) for balls of 24 to 36 in. Wet clay is
    /// heavier.
    private static final double BALL_SHAPE = 2 / 3.0;

    private static final double SOIL_POUNDS = 110;
    /// Container mix, moist: an 18 x 24 in tree pot weighs 125 to 150 lb, a 20 x 30 in one 200 to 225 (a
    /// grower's figures).
    private static final double MIX_POUNDS = 40;

    /// The estimate for a size; empty for bare roots, pots by diameter, and sizes beyond the tables or by
    /// spread.
    public static Optional<LiftWeight> of(StockSize size) {
        return switch (size) {
            case StockSize.Container(ContainerClass of) ->
                Optional.of(
                        new LiftWeight(rounded(of.maxCubicInches() / CUBIC_INCHES_A_CUBIC_FOOT * MIX_POUNDS), false));
            case StockSize.MetricPot pot -> Optional.empty();
            case StockSize.Caliper caliper -> ballInches(caliper).map(LiftWeight::ofBall);
            case StockSize.Height height -> ballInches(height).map(LiftWeight::ofBall);
            case StockSize.Spread spread -> Optional.empty();
        };
    }

    /// The least diameter in inches that the standard asks of a ball for this size; empty when it has none.
    public static Optional<Integer> ballInches(StockSize size) {
        return BallStandard.leastInches(size, BallStandard.Kind.CONE_TYPE_CONIFER);
    }

    /// The weight of a ball.
    ///
    /// @param diameterInches 10 to 80
    public static LiftWeight ofBall(int diameterInches) {
        double depth = diameterInches * BallStandard.depthShare(diameterInches);
        double cubicInches = Math.PI / 4 * diameterInches * diameterInches * depth * BALL_SHAPE;
        return new LiftWeight(rounded(cubicInches / CUBIC_INCHES_A_CUBIC_FOOT * SOIL_POUNDS), true);
    }

    private static int rounded(double pounds) {
        return (int) Math.round(pounds / STEP) * STEP;
    }

    /// Whether it is more than one person should lift.
    public boolean isHeavy() {
        return pounds > ALONE_POUNDS;
    }
}
