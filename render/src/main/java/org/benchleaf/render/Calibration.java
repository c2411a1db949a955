package org.benchleaf.render;

/// What a printer does wrong, turned round: everything is moved and stretched by it before it is printed.
///
/// @param rightMm moves everything right; -10 to 10
/// @param downMm moves everything down; -10 to 10
/// @param scaleX stretches from the left edge; 0.95 to 1.05
/// @param scaleY stretches from the upper edge; 0.95 to 1.05
/// @throws IllegalArgumentException when one is out of its range
public record Calibration(double rightMm, double downMm, double scaleX, double scaleY) {
    /// A printer that does nothing wrong.
    public static final Calibration NONE = new Calibration(0, 0, 1, 1);

    private static final double MOST_MM = 10;
    private static final double MOST_STRETCH = 0.05;

    public Calibration {
        if (!(Math.abs(rightMm) <= MOST_MM && Math.abs(downMm) <= MOST_MM)) {
            throw new IllegalArgumentException(
                    "a printer is put right by at most 10 mm; got " + rightMm + ", " + downMm);
        }
        if (!(Math.abs(scaleX - 1) <= MOST_STRETCH && Math.abs(scaleY - 1) <= MOST_STRETCH)) {
            throw new IllegalArgumentException("a printer is put right by at most 5 %; got " + scaleX + ", " + scaleY);
        }
    }

    /// From what was measured on a printed calibration page.
    ///
    /// @param leftMm from the paper's left edge to the upright line
    /// @param topMm from the paper's upper edge to the level line
    /// @param wideMm length of the level bar
    /// @param tallMm length of the upright bar
    /// @throws IllegalArgumentException when that is more than can be put right
    public static Calibration measured(double leftMm, double topMm, double wideMm, double tallMm) {
        double x = CalibrationPage.WIDE_MM / wideMm;
        double y = CalibrationPage.TALL_MM / tallMm;
        // where the line would have stood had the printer only stretched; what is left is its offset
        double right = CalibrationPage.LINE_MM - x * leftMm;
        double down = CalibrationPage.LINE_MM - y * topMm;
        return new Calibration(round(right), round(down), round(x), round(y));
    }

    private static double round(double value) {
        return Math.round(value * 10_000) / 10_000.0;
    }
}
