package org.benchleaf.shared.stock;

import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;

/// The least root balls of field-grown stock: advice, as the American Standard for Nursery Stock (ANSI Z60.1)
/// gives it.
///
/// Single figures are taken over as facts. Balls of shade trees of 2, 3, 4 and 5 in caliper were seen in
/// growers' pages, the others are from memory.
public final class BallStandard {
    /// From which table.
    public enum Kind {
        SHADE_TREE,
        CONE_TYPE_CONIFER,
        DECIDUOUS_SHRUB
    }

    /// Inches across by caliper in quarter inches.
    private static final NavigableMap<Integer, Integer> OF_CALIPER = new TreeMap<>(Map.ofEntries(
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

    /// Inches across by the upper end of the height in inches.
    private static final NavigableMap<Integer, Integer> OF_CONIFER = new TreeMap<>(Map.ofEntries(
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

    private static final NavigableMap<Integer, Integer> OF_SHRUB =
            new TreeMap<>(Map.of(24, 10, 36, 12, 48, 14, 60, 16, 72, 18, 84, 20, 96, 22, 108, 24, 120, 26));

    private BallStandard() {}

    /// The least diameter in inches of the ball of a size; empty when it has no ball, or the table ends
    /// below it.
    ///
    /// @param kind by which table heights are judged; a caliper is always a shade tree's
    public static Optional<Integer> leastInches(StockSize size, Kind kind) {
        return switch (size) {
            case StockSize.Caliper(int quarters, RootPackage roots)
            when roots == RootPackage.BALLED_AND_BURLAPPED -> ceiling(OF_CALIPER, quarters);
            case StockSize.Height(int low, int high, RootPackage roots)
            when roots == RootPackage.BALLED_AND_BURLAPPED ->
                ceiling(kind == Kind.DECIDUOUS_SHRUB ? OF_SHRUB : OF_CONIFER, high);
            default -> Optional.empty();
        };
    }

    private static Optional<Integer> ceiling(NavigableMap<Integer, Integer> table, int size) {
        return Optional.ofNullable(table.ceilingEntry(size)).map(Map.Entry::getValue);
    }

    /// The least depth of a ball in inches, rounded up; a city's rule (Sunny Isles Beach, Florida, 2005):
    /// 75 % of the diameter below 20 in, 65 % to 30 in, 60 % above. The standard asks a little less of
    /// small balls.
    ///
    /// @param diameterInches 1 or more
    public static int leastDepthInches(int diameterInches) {
        return (int) Math.ceil(diameterInches * depthShare(diameterInches));
    }

    static double depthShare(int diameterInches) {
        if (diameterInches < 20) {
            return 0.75;
        }
        return diameterInches <= 30 ? 0.65 : 0.60;
    }

    /// The step that the standard gives for a height or spread beginning so, in inches: 3 up to 18, 6 to
    /// 24, a foot to 6 ft, then one or two; from memory.
    ///
    /// @return the usual upper end; empty below 6 in
    public static OptionalInt usualUpperInches(int lowInches) {
        if (lowInches < 6) {
            return OptionalInt.empty();
        }
        if (lowInches < 18) {
            return OptionalInt.of(lowInches + 3);
        }
        return OptionalInt.of(lowInches < 24 ? lowInches + 6 : lowInches + 12);
    }

    /// Whether a span is one of the standard's: `15-18 in`, `18-24 in`, `2-3 ft`, `6-8 ft`. From memory.
    public static boolean isUsual(int lowInches, int highInches) {
        if (lowInches < 18) {
            return lowInches >= 6 && lowInches % 3 == 0 && highInches == lowInches + 3;
        }
        if (lowInches == 18) {
            return highInches == 24;
        }
        int step = highInches - lowInches;
        return lowInches % 12 == 0 && (step == 12 || lowInches >= 72 && step == 24);
    }
}
