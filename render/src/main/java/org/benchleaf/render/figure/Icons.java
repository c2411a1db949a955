package org.benchleaf.render.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.benchleaf.shared.site.Exposure;

/// Plain icons of ours, 24 by 24 points, one weight of line: light, water, winter cold, size, and the triangle of a
/// caution. Words always stand beside them.
public final class Icons {
    private static final double BOX = 24;
    private static final double LINE = 1.3;
    private static final Ink INK = Ink.Role.TEXT;

    private Icons() {}

    /// The sun: open in full sun, half filled in part sun or shade, filled in full shade; by the brightest and the
    /// darkest it does well in.
    public static Figure light(Set<Exposure> exposure, String title) {
        List<Mark> marks = new ArrayList<>();
        boolean sun = exposure.contains(Exposure.FULL_SUN);
        boolean shade = exposure.contains(Exposure.FULL_SHADE);
        boolean between =
                exposure.contains(Exposure.PART_SUN) || exposure.contains(Exposure.PART_SHADE) || sun && shade;
        double r = 5.2;
        if (between) {
            marks.add(new Mark.Area(halfDisc(r), INK));
        } else if (shade) {
            marks.add(new Mark.Area(Path.circle(12, 12, r), INK));
        }
        marks.add(new Mark.Line(Path.circle(12, 12, r), INK, LINE));
        if (sun || between) {
            for (int ray = 0; ray < 8; ray++) {
                double a = ray * Math.PI / 4;
                marks.add(new Mark.Line(
                        Path.line(
                                12 + 8 * Math.sin(a),
                                12 - 8 * Math.cos(a),
                                12 + 10.8 * Math.sin(a),
                                12 - 10.8 * Math.cos(a)),
                        INK,
                        LINE));
            }
        }
        return new Figure(BOX, BOX, marks, title, title);
    }

    private static Path halfDisc(double r) {
        double k = 0.5523 * r;
        return Path.from(12, 12 - r)
                .curve(12 + k, 12 - r, 12 + r, 12 - k, 12 + r, 12)
                .curve(12 + r, 12 + k, 12 + k, 12 + r, 12, 12 + r)
                .close()
                .build();
    }

    /// Drops: one to three, filled as many as it needs.
    ///
    /// @param filled 1 little, 2 moderate, 3 much
    public static Figure water(int filled, String title) {
        List<Mark> marks = new ArrayList<>();
        double[][] places = {{5, 13}, {12, 13}, {19, 13}};
        for (int drop = 0; drop < 3; drop++) {
            Path path = drop(places[drop][0], places[drop][1]);
            if (drop < filled) {
                marks.add(new Mark.Area(path, INK));
            }
            marks.add(new Mark.Line(path, drop < filled ? INK : Ink.Role.LINE, drop < filled ? LINE : 0.9));
        }
        return new Figure(BOX, BOX, marks, title, title);
    }

    private static Path drop(double x, double y) {
        return Path.from(x, y - 7)
                .curve(x + 1, y - 4.2, x + 3, y - 1.8, x + 3, y + 1.2)
                .curve(x + 3, y + 3, x + 1.7, y + 4.2, x, y + 4.2)
                .curve(x - 1.7, y + 4.2, x - 3, y + 3, x - 3, y + 1.2)
                .curve(x - 3, y - 1.8, x - 1, y - 4.2, x, y - 7)
                .close()
                .build();
    }

    /// A snow crystal: how cold a winter it bears.
    public static Figure winter(String title) {
        List<Mark> marks = new ArrayList<>();
        for (int arm = 0; arm < 6; arm++) {
            double a = arm * Math.PI / 3;
            marks.add(new Mark.Line(ray(a, 0, 10), INK, LINE));
            for (double side : new double[] {-1, 1}) {
                double bx = 12 + 5.6 * Math.sin(a);
                double by = 12 - 5.6 * Math.cos(a);
                double b = a + side * Math.PI / 4;
                marks.add(new Mark.Line(Path.line(bx, by, bx + 3.3 * Math.sin(b), by - 3.3 * Math.cos(b)), INK, LINE));
            }
        }
        return new Figure(BOX, BOX, marks, title, title);
    }

    private static Path ray(double angle, double from, double to) {
        return Path.line(
                12 + from * Math.sin(angle),
                12 - from * Math.cos(angle),
                12 + to * Math.sin(angle),
                12 - to * Math.cos(angle));
    }

    /// A round of twelve ticks with a leaf's share filled: when in the year.
    public static Figure season(String title) {
        List<Mark> marks = new ArrayList<>();
        marks.add(new Mark.Line(Path.circle(12, 12, 6.2), INK, LINE));
        for (int month = 0; month < 12; month++) {
            double a = month * Math.PI / 6;
            marks.add(new Mark.Line(ray(a, month % 3 == 0 ? 8 : 8.8, 10.8), INK, LINE));
        }
        marks.add(new Mark.Area(quarter(6.2), INK));
        return new Figure(BOX, BOX, marks, title, title);
    }

    private static Path quarter(double r) {
        double k = 0.5523 * r;
        return Path.from(12, 12)
                .line(12 + r, 12)
                .curve(12 + r, 12 + k, 12 + k, 12 + r, 12, 12 + r)
                .close()
                .build();
    }

    /// Arrows up and across from one corner: how tall and how wide.
    public static Figure size(String title) {
        List<Mark> marks = new ArrayList<>();
        marks.add(new Mark.Line(Path.from(5, 2.5).line(5, 19).line(21.5, 19).build(), INK, LINE));
        marks.add(new Mark.Line(Path.from(2.2, 5.6).line(5, 2.4).line(7.8, 5.6).build(), INK, LINE));
        marks.add(new Mark.Line(
                Path.from(18.4, 16.2).line(21.6, 19).line(18.4, 21.8).build(), INK, LINE));
        Path leaf = Path.from(9.2, 15.2)
                .curve(8.6, 10, 12.4, 6.4, 18, 6)
                .curve(18.2, 11.8, 14.6, 15.6, 9.2, 15.2)
                .close()
                .build();
        marks.add(new Mark.Line(leaf, INK, 1));
        marks.add(new Mark.Line(Path.line(9.2, 15.2, 14.4, 9.8), INK, 0.8));
        return new Figure(BOX, BOX, marks, title, title);
    }

    /// A plain triangle with its stroke and point.
    public static Figure caution(String title) {
        List<Mark> marks = new ArrayList<>();
        marks.add(new Mark.Line(
                Path.from(12, 3).line(22, 20.5).line(2, 20.5).close().build(), INK, 1.6));
        marks.add(new Mark.Line(Path.line(12, 9.2, 12, 14.6), INK, 1.9));
        marks.add(new Mark.Area(Path.circle(12, 17.7, 1.15), INK));
        return new Figure(BOX, BOX, marks, title, title);
    }
}
