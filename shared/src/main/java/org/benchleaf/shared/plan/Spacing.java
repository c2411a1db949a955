package org.benchleaf.shared.plan;

import java.util.OptionalDouble;
import org.benchleaf.shared.Reading;

/// How far plants stand from each other in a bed, center to center.
///
/// In a square pattern each plant takes the square of the distance; in a triangular one the rows stand closer,
/// by the factor of half the root of 3, so that about 15 in 100 more are needed. Counts are rounded up to whole
/// plants.
///
/// @param cm above 0, at most 10,000
/// @param pattern of the bed
public record Spacing(double cm, Pattern pattern) {
    private static final double MOST_CM = 10_000;
    private static final double ROWS = Math.sqrt(3) / 2;
    /// What floating point may add to a whole number.
    private static final double DUST = 1e-9;

    private static final int MOST_PLANTS = 100_000_000;

    /// How the plants of a bed stand.
    public enum Pattern {
        SQUARE,
        TRIANGULAR
    }

    public Spacing {
        if (!(cm > 0 && cm <= MOST_CM)) {
            throw new IllegalArgumentException("a spacing is above 0 and at most 10000 cm; got " + cm);
        }
    }

    /// Reads `18 in`, `1.5 ft`, `45 cm`.
    public static Reading<Spacing> read(String text, Pattern pattern) {
        OptionalDouble cm = Measured.cm(text);
        return cm.isPresent() && cm.getAsDouble() <= MOST_CM
                ? Reading.of(new Spacing(cm.getAsDouble(), pattern))
                : Reading.refused("spacing.unknown", text);
    }

    public static Spacing ofInches(double inches, Pattern pattern) {
        return new Spacing(inches * Measured.INCH_CM, pattern);
    }

    /// Distance between rows, in cm.
    public double rowCm() {
        return pattern == Pattern.TRIANGULAR ? cm * ROWS : cm;
    }

    /// Plants for a square foot, not rounded.
    public double perSquareFoot() {
        return plants(BedArea.ofSquareFeet(1));
    }

    private double plants(BedArea area) {
        return area.squareCm() / (cm * rowCm());
    }

    /// Whole plants for a bed, rounded up.
    ///
    /// @param waste share added for losses, 0 to 1: 0.05 for one in twenty
    public int plantsFor(BedArea area, double waste) {
        return up(plants(area) * (1 + waste));
    }

    /// Whole plants for a row with one at each end; in a triangular pattern the plants of each second row stand
    /// in the gaps of the first, one fewer.
    ///
    /// @param lengthCm above 0
    /// @param rows 1 or more
    /// @param waste share added for losses, 0 to 1
    public int plantsAlong(double lengthCm, int rows, double waste) {
        int gaps = (int) Math.floor(lengthCm / cm + DUST);
        int second = rows / 2;
        int fewer = pattern == Pattern.TRIANGULAR ? Math.min(second, gaps == 0 ? 0 : second) : 0;
        return up((rows * (gaps + 1.0) - fewer) * (1 + waste));
    }

    private static int up(double plants) {
        return (int) Math.min(MOST_PLANTS, Math.max(1, Math.ceil(plants - DUST)));
    }

    /// Reads the length of a row in cm: `60 ft`, `18 m`.
    public static Reading<Double> readLength(String text) {
        OptionalDouble cm = Measured.cm(text);
        return cm.isPresent() ? Reading.of(cm.getAsDouble()) : Reading.refused("length.unknown", text);
    }
}
