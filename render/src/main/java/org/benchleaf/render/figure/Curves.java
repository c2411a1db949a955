package org.benchleaf.render.figure;

/// Places on a quadratic Bézier curve.
final class Curves {
    private Curves() {}

    /// One coordinate at a share of the way.
    static double at(double from, double bend, double to, double share) {
        double rest = 1 - share;
        return rest * rest * from + 2 * share * rest * bend + share * share * to;
    }

    /// The direction of travel in radians.
    static double angle(double x0, double y0, double bx, double by, double x1, double y1, double share) {
        double rest = 1 - share;
        return Math.atan2(rest * (by - y0) + share * (y1 - by), rest * (bx - x0) + share * (x1 - bx));
    }
}
