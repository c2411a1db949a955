package org.benchleaf.render.figure;

import java.util.ArrayList;
import java.util.List;

/// What everybody knows the size of: a person of 1.70 m and a rule of 2 m.
final class Scale {
    static final int PERSON_CM = 170;
    static final int RULE_CM = 200;

    /// Right half of a standing person, x and height as shares of the whole height.
    private static final double[][] HALF = {
        {0.020, 0.872},
        {0.052, 0.850},
        {0.098, 0.822},
        {0.118, 0.760},
        {0.130, 0.660},
        {0.140, 0.560},
        {0.139, 0.478},
        {0.122, 0.455},
        {0.112, 0.520},
        {0.104, 0.620},
        {0.088, 0.730},
        {0.077, 0.640},
        {0.086, 0.560},
        {0.092, 0.480},
        {0.084, 0.340},
        {0.068, 0.200},
        {0.056, 0.075},
        {0.068, 0.022},
        {0.078, 0.004},
        {0.030, 0.002},
        {0.024, 0.060},
        {0.026, 0.200},
        {0.020, 0.340},
        {0.004, 0.452}
    };

    private Scale() {}

    /// @param pointsPerCm the scale
    static List<Mark> person(double x, double ground, double pointsPerCm) {
        double h = PERSON_CM * pointsPerCm;
        int n = HALF.length;
        double[] xy = new double[n * 4];
        for (int i = 0; i < n; i++) {
            xy[2 * i] = x + HALF[i][0] * h;
            xy[2 * i + 1] = ground - HALF[i][1] * h;
            int back = 2 * n - 1 - i;
            xy[2 * back] = x - HALF[i][0] * h;
            xy[2 * back + 1] = ground - HALF[i][1] * h;
        }
        double headX = 0.042 * h;
        double headY = 0.058 * h;
        double cy = ground - 0.940 * h;
        Path head = Path.smooth(
                x,
                cy - headY,
                x + headX * 0.86,
                cy - headY * 0.5,
                x + headX,
                cy + headY * 0.1,
                x + headX * 0.62,
                cy + headY * 0.8,
                x,
                cy + headY * 1.12,
                x - headX * 0.62,
                cy + headY * 0.8,
                x - headX,
                cy + headY * 0.1,
                x - headX * 0.86,
                cy - headY * 0.5);
        return List.of(
                new Mark.Area(Path.smooth(xy), Ink.Role.SCALE),
                new Mark.Area(Path.rectangle(x - 0.02 * h, ground - 0.9 * h, 0.04 * h, 0.05 * h), Ink.Role.SCALE),
                new Mark.Area(head, Ink.Role.SCALE));
    }

    /// A staff in bands of half a metre, or of one where half would be too fine.
    static List<Mark> rule(double x, double ground, double pointsPerCm) {
        double band = (50 * pointsPerCm < 3 ? 100 : 50 * pointsPerCm > 40 ? 10 : 50) * pointsPerCm;
        double height = RULE_CM * pointsPerCm;
        double width = Math.clamp(height * 0.05, 1.6, 4);
        List<Mark> marks = new ArrayList<>();
        marks.add(new Mark.Area(Path.rectangle(x - width / 2, ground - height, width, height), Ink.Role.PAPER));
        int count = (int) Math.round(height / band);
        for (int i = 0; i < count; i += 2) {
            marks.add(
                    new Mark.Area(Path.rectangle(x - width / 2, ground - (i + 1) * band, width, band), Ink.Role.SCALE));
        }
        marks.add(new Mark.Line(Path.rectangle(x - width / 2, ground - height, width, height), Ink.Role.LINE, 0.4));
        return marks;
    }
}
