package org.benchleaf.shared.stock;

import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/// About how heavy one plant of a size is to lift: an estimate that varies with soil moisture, never a promise.
///
/// @param pounds rounded to 25 lb
/// @param ball whether it comes with a ball of soil, not in a container
public record LiftWeight(int pounds, boolean ball) {
    /// The most that one person may lift in the best posture: load constant of the NIOSH equation, 23 kg; from
    /// memory.
    public static final int ALONE_POUNDS = 51;

    private static final int STEP = 25;
    private static final double CUBIC_INCHES_A_CUBIC_FOOT = 1728;
    /// A ball fills about two thirds of its cylinder, at 110 lb a cubic foot of moist soil; computed, within 20 %
    /// of a
    /// grower's table (bluegrassfarms.net/faq) for balls of 24 to 36 in. Wet clay is heavier.
    private static final double BALL_SHAPE = 2 / 3.0;

    private static final double SOIL_POUNDS = 110;
    /// Container mix, moist: an 18 x 24 in tree pot weighs 125 to 150 lb, a 20 x 30 in one 200 to 225 (a grower's
    /// figures).
    private static final double MIX_POUNDS = 40;

    /// Least ball diameter in inches by caliper in quarter inches, shade trees; ANSI Z60.1 (2 to 5 in seen, others
    /// from
    /// memory).
    private static final NavigableMap<Integer, Integer> BALL_OF_CALIPER = new TreeMap<>(Map.ofEntries(
            Map.entry(2, 12),
            Map.entry(3, 14),
            Map.entry(4, 16),
            Map.entry(5, 18),
            Map.entry(6, 20),
            Map.entry(7, 22),
            Map.entry(8, 24),
            Map.entry(10, 28),
            Map.entry(12, 32),
            Map.entry(14, 38),
            Map.entry(16, 42),
            Map.entry(18, 48),
            Map.entry(20, 54),
            Map.entry(24, 60),
            Map.entry(28, 70),
            Map.entry(32, 80)));

    /// Least ball diameter in inches by the upper end of the height in inches, cone-type conifers; ANSI Z60.1, from
    /// memory. Shrubs need the same or a little less.
    private static final NavigableMap<Integer, Integer> BALL_OF_HEIGHT = new TreeMap<>(Map.ofEntries(
            Map.entry(24, 10),
            Map.entry(36, 12),
            Map.entry(48, 14),
            Map.entry(60, 16),
            Map.entry(72, 20),
            Map.entry(84, 22),
            Map.entry(96, 24),
            Map.entry(108, 27),
            Map.entry(120, 30),
            Map.entry(144, 34),
            Map.entry(168, 38),
            Map.entry(192, 43),
            Map.entry(216, 48)));

    /// The estimate for a size; empty for bare roots, pots by diameter, and sizes beyond the tables.
    public static Optional<LiftWeight> of(StockSize size) {
        return switch (size) {
            case StockSize.Container(ContainerClass of) ->
                Optional.of(
                        new LiftWeight(rounded(of.maxCubicInches() / CUBIC_INCHES_A_CUBIC_FOOT * MIX_POUNDS), false));
            case StockSize.MetricPot pot -> Optional.empty();
            case StockSize.Caliper caliper -> ballInches(caliper).map(LiftWeight::ofBall);
            case StockSize.Height height -> ballInches(height).map(LiftWeight::ofBall);
        };
    }

    /// The least diameter in inches that the standard asks of a ball for this size; empty when it has none.
    public static Optional<Integer> ballInches(StockSize size) {
        return switch (size) {
            case StockSize.Caliper(int quarters, RootPackage roots)
            when roots == RootPackage.BALLED_AND_BURLAPPED -> atLeast(BALL_OF_CALIPER, quarters);
            case StockSize.Height(int low, int high, RootPackage roots)
            when roots == RootPackage.BALLED_AND_BURLAPPED -> atLeast(BALL_OF_HEIGHT, high);
            default -> Optional.empty();
        };
    }

    /// The weight of a ball.
    ///
    /// @param diameterInches 10 to 80
    public static LiftWeight ofBall(int diameterInches) {
        double depth = diameterInches * depthShare(diameterInches);
        double cubicInches = Math.PI / 4 * diameterInches * diameterInches * depth * BALL_SHAPE;
        return new LiftWeight(rounded(cubicInches / CUBIC_INCHES_A_CUBIC_FOOT * SOIL_POUNDS), true);
    }

    /// Depth of a ball for its diameter; the rule of a city specification (docucenter.sibfl.net page 173, 2005): 75 %
    /// below 20 in, 65 % to 30 in, 60 % above.
    private static double depthShare(int diameterInches) {
        if (diameterInches < 20) {
            return 0.75;
        }
        return diameterInches <= 30 ? 0.65 : 0.60;
    }

    private static Optional<Integer> atLeast(NavigableMap<Integer, Integer> table, int size) {
        return Optional.ofNullable(table.ceilingEntry(size)).map(Map.Entry::getValue);
    }

    private static int rounded(double pounds) {
        return (int) Math.round(pounds / STEP) * STEP;
    }

    /// Whether it is more than one person should lift.
    public boolean isHeavy() {
        return pounds > ALONE_POUNDS;
    }
}
