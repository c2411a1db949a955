package org.benchleaf.shared.color;

/// A color in CIE L\*a\*b\*, and how far an eye sees it from another.
///
/// @param lightness L\*, 0 to 100
/// @param a green (negative) to red
/// @param b blue (negative) to yellow
public record Lab(double lightness, double a, double b) {
    private static final double POW_25_7 = Math.pow(25, 7);

    /// The color difference CIEDE2000; about 2.3 is one just noticeable step (from memory).
    ///
    /// Formula: Sharma, Wu, Dalal, Color Research and Application 30(1), 2005, pp. 21-30.
    ///
    /// @return 0 for the same color; over 100 between the ends of the space
    public double differenceTo(Lab other) {
        double meanC7 = Math.pow((Math.hypot(a, b) + Math.hypot(other.a, other.b)) / 2, 7);
        double g = 0.5 * (1 - Math.sqrt(meanC7 / (meanC7 + POW_25_7)));
        double a1 = a * (1 + g);
        double a2 = other.a * (1 + g);
        double c1 = Math.hypot(a1, b);
        double c2 = Math.hypot(a2, other.b);
        double h1 = hue(a1, b);
        double h2 = hue(a2, other.b);
        boolean neutral = c1 * c2 == 0;

        double dL = other.lightness - lightness;
        double dC = c2 - c1;
        double dh = neutral ? 0 : shortWay(h2 - h1);
        double dH = 2 * Math.sqrt(c1 * c2) * Math.sin(Math.toRadians(dh / 2));

        double meanL = (lightness + other.lightness) / 2;
        double meanC = (c1 + c2) / 2;
        double meanH = neutral ? h1 + h2 : meanHue(h1, h2);
        double t = 1
                - 0.17 * cos(meanH - 30)
                + 0.24 * cos(2 * meanH)
                + 0.32 * cos(3 * meanH + 6)
                - 0.20 * cos(4 * meanH - 63);
        double l50 = (meanL - 50) * (meanL - 50);
        double sL = 1 + 0.015 * l50 / Math.sqrt(20 + l50);
        double sC = 1 + 0.045 * meanC;
        double sH = 1 + 0.015 * meanC * t;
        double c7 = Math.pow(meanC, 7);
        double turn = 30 * Math.exp(-Math.pow((meanH - 275) / 25, 2));
        double rT = -2 * Math.sqrt(c7 / (c7 + POW_25_7)) * Math.sin(Math.toRadians(2 * turn));
        double l = dL / sL;
        double c = dC / sC;
        double h = dH / sH;
        return Math.sqrt(l * l + c * c + h * h + rT * c * h);
    }

    private static double hue(double a, double b) {
        if (a == 0 && b == 0) {
            return 0;
        }
        double degrees = Math.toDegrees(Math.atan2(b, a));
        return degrees < 0 ? degrees + 360 : degrees;
    }

    private static double shortWay(double degrees) {
        return degrees > 180 ? degrees - 360 : degrees < -180 ? degrees + 360 : degrees;
    }

    private static double meanHue(double h1, double h2) {
        double sum = h1 + h2;
        if (Math.abs(h1 - h2) <= 180) {
            return sum / 2;
        }
        return sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
    }

    private static double cos(double degrees) {
        return Math.cos(Math.toRadians(degrees));
    }
}
