package org.benchleaf.render.figure;

import java.util.ArrayList;
import java.util.List;

/// An outline of straight and curved steps; immutable once built.
///
/// @param steps a move first
public record Path(List<Step> steps) {
    public Path {
        steps = List.copyOf(steps);
    }

    /// One stroke of the pen.
    public sealed interface Step {
        record Move(double x, double y) implements Step {}

        record Line(double x, double y) implements Step {}

        /// A cubic Bézier curve.
        record Curve(double x1, double y1, double x2, double y2, double x, double y) implements Step {}

        record Close() implements Step {}
    }

    public static Builder from(double x, double y) {
        return new Builder().move(x, y);
    }

    public static Path line(double x1, double y1, double x2, double y2) {
        return from(x1, y1).line(x2, y2).build();
    }

    public static Path rectangle(double x, double y, double width, double height) {
        return from(x, y)
                .line(x + width, y)
                .line(x + width, y + height)
                .line(x, y + height)
                .close()
                .build();
    }

    public static Path circle(double x, double y, double radius) {
        double k = 0.5523 * radius;
        return from(x + radius, y)
                .curve(x + radius, y + k, x + k, y + radius, x, y + radius)
                .curve(x - k, y + radius, x - radius, y + k, x - radius, y)
                .curve(x - radius, y - k, x - k, y - radius, x, y - radius)
                .curve(x + k, y - radius, x + radius, y - k, x + radius, y)
                .close()
                .build();
    }

    /// An arc of a circle; angles in radians clockwise from twelve o'clock.
    public static Path arc(double x, double y, double radius, double from, double to) {
        int pieces = Math.max(1, (int) Math.ceil(Math.abs(to - from) / (Math.PI / 4)));
        double step = (to - from) / pieces;
        double k = 4.0 / 3 * Math.tan(step / 4) * radius;
        Builder path = from(x + radius * Math.sin(from), y - radius * Math.cos(from));
        for (int piece = 0; piece < pieces; piece++) {
            double a = from + piece * step;
            double b = a + step;
            path.curve(
                    x + radius * Math.sin(a) + k * Math.cos(a),
                    y - radius * Math.cos(a) + k * Math.sin(a),
                    x + radius * Math.sin(b) - k * Math.cos(b),
                    y - radius * Math.cos(b) - k * Math.sin(b),
                    x + radius * Math.sin(b),
                    y - radius * Math.cos(b));
        }
        return path.build();
    }

    /// A smooth closed curve through points, x and y in turn (Catmull-Rom).
    public static Path smooth(double... xy) {
        int n = xy.length / 2;
        Builder path = from(xy[0], xy[1]);
        for (int i = 0; i < n; i++) {
            int before = (i + n - 1) % n;
            int next = (i + 1) % n;
            int after = (i + 2) % n;
            path.curve(
                    xy[2 * i] + (xy[2 * next] - xy[2 * before]) / 6,
                    xy[2 * i + 1] + (xy[2 * next + 1] - xy[2 * before + 1]) / 6,
                    xy[2 * next] - (xy[2 * after] - xy[2 * i]) / 6,
                    xy[2 * next + 1] - (xy[2 * after + 1] - xy[2 * i + 1]) / 6,
                    xy[2 * next],
                    xy[2 * next + 1]);
        }
        return path.close().build();
    }

    /// Gathers steps.
    public static final class Builder {
        private final List<Step> steps = new ArrayList<>();

        public Builder move(double x, double y) {
            steps.add(new Step.Move(x, y));
            return this;
        }

        public Builder line(double x, double y) {
            steps.add(new Step.Line(x, y));
            return this;
        }

        public Builder curve(double x1, double y1, double x2, double y2, double x, double y) {
            steps.add(new Step.Curve(x1, y1, x2, y2, x, y));
            return this;
        }

        public Builder close() {
            steps.add(new Step.Close());
            return this;
        }

        public Path build() {
            return new Path(steps);
        }
    }
}
