package org.benchleaf.render.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import org.benchleaf.shared.color.Srgb;

/// Draws parts of a plant: stems, leaves, blades, masses of foliage. Places are given from the foot of the plant,
/// x to the right and y **up**, in points; what looks irregular is seeded, so that a plant is always drawn alike.
final class Brush {
    /// Shades that are nearer than this are one.
    private static final double STEP = 0.07;

    private static final Srgb BARK = new Srgb(0x75, 0x68, 0x5B);

    private final List<Mark> marks = new ArrayList<>();
    private final double standX;
    private final double groundY;
    private final Srgb leafColor;
    private final Random random;
    private final SortedMap<Integer, List<Path.Step>> gathered = new TreeMap<>();
    private boolean gathering;
    private final boolean bare;

    /// A plant in leaf.
    ///
    /// @param leaf the color of its leaves
    /// @param seed what makes this plant irregular in its own way
    Brush(double standX, double groundY, Srgb leaf, long seed) {
        this(standX, groundY, leaf, seed, false);
    }

    /// @param leaf the color of the leaves, of a bare plant that of its twigs
    /// @param seed what makes this plant irregular in its own way
    /// @param bare whether leaves are left out
    Brush(double standX, double groundY, Srgb leaf, long seed, boolean bare) {
        this.bare = bare;
        this.standX = standX;
        this.groundY = groundY;
        this.leafColor = leaf;
        this.random = new Random(seed);
    }

    List<Mark> marks() {
        return marks;
    }

    /// Between 0 and 1.
    double chance() {
        return random.nextDouble();
    }

    /// Between `low` and `high`.
    double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    Ink shade(double lightness) {
        return new Ink.Plant(lightness >= 0 ? Tint.lighter(leafColor, lightness) : Tint.darker(leafColor, -lightness));
    }

    private double x(double x) {
        return standX + x;
    }

    private double y(double y) {
        return groundY - y;
    }

    /// A tapering stem or trunk along a curve.
    void trunk(double x0, double y0, double bendX, double bendY, double x1, double y1, double foot, double tip) {
        limb(x0, y0, bendX, bendY, x1, y1, foot, tip, new Ink.Plant(bare ? leafColor : BARK));
    }

    /// A tapering green stem.
    void stem(double x0, double y0, double bendX, double bendY, double x1, double y1, double foot, double tip) {
        limb(x0, y0, bendX, bendY, x1, y1, foot, tip, shade(-0.22));
    }

    private void limb(
            double x0, double y0, double bx, double by, double x1, double y1, double foot, double tip, Ink ink) {
        double start = Math.atan2(by - y0, bx - x0) + Math.PI / 2;
        double end = Math.atan2(y1 - by, x1 - bx) + Math.PI / 2;
        double turn = Math.atan2(y1 - y0, x1 - x0) + Math.PI / 2;
        double mid = (foot + tip) / 4;
        Path.Builder path = Path.from(x(x0 + cos(start) * foot / 2), y(y0 + sin(start) * foot / 2));
        quadratic(
                path,
                x0 + cos(start) * foot / 2,
                y0 + sin(start) * foot / 2,
                bx + cos(turn) * mid,
                by + sin(turn) * mid,
                x1 + cos(end) * tip / 2,
                y1 + sin(end) * tip / 2);
        path.line(x(x1 - cos(end) * tip / 2), y(y1 - sin(end) * tip / 2));
        quadratic(
                path,
                x1 - cos(end) * tip / 2,
                y1 - sin(end) * tip / 2,
                bx - cos(turn) * mid,
                by - sin(turn) * mid,
                x0 - cos(start) * foot / 2,
                y0 - sin(start) * foot / 2);
        marks.add(new Mark.Area(path.close().build(), ink));
    }

    private void quadratic(Path.Builder path, double x0, double y0, double bx, double by, double x1, double y1) {
        path.curve(
                x(x0 + (bx - x0) * 2 / 3),
                y(y0 + (by - y0) * 2 / 3),
                x(x1 + (bx - x1) * 2 / 3),
                y(y1 + (by - y1) * 2 / 3),
                x(x1),
                y(y1));
    }

    /// A round mass of foliage with a soft, irregular edge.
    void mass(double cx, double cy, double rx, double ry, double lightness) {
        int points = 9;
        double[] xy = new double[points * 2];
        double turn = between(0, 1);
        for (int i = 0; i < points; i++) {
            double a = (i + turn) * 2 * Math.PI / points;
            double r = between(0.88, 1.1);
            xy[2 * i] = x(cx + rx * r * Math.cos(a));
            xy[2 * i + 1] = Math.min(y(cy + ry * r * Math.sin(a)), groundY);
        }
        marks.add(new Mark.Area(Path.smooth(xy), shade(lightness)));
    }

    /// A pointed leaf from its foot.
    ///
    /// @param angle of its tip in radians, 0 to the right, π/2 up
    /// @param breadth its width as a share of its length
    void leaf(double footX, double footHeight, double wanted, double length, double breadth, double lightness) {
        if (bare) {
            return;
        }
        double py = Math.max(0, footHeight);
        double px = footX;
        // no leaf grows into the ground
        double angle = py + sin(wanted) * length < 0 ? -wanted : wanted;
        double dx = cos(angle) * length;
        double dy = sin(angle) * length;
        double nx = -sin(angle) * length * breadth * 0.62;
        double ny = cos(angle) * length * breadth * 0.62;
        Path leaf = Path.from(x(px), y(py))
                .curve(
                        x(px + dx * 0.25 + nx),
                        y(py + dy * 0.25 + ny),
                        x(px + dx * 0.68 + nx),
                        y(py + dy * 0.68 + ny),
                        x(px + dx),
                        y(py + dy))
                .curve(
                        x(px + dx * 0.68 - nx),
                        y(py + dy * 0.68 - ny),
                        x(px + dx * 0.25 - nx),
                        y(py + dy * 0.25 - ny),
                        x(px),
                        y(py))
                .close()
                .build();
        if (gathering) {
            gathered.computeIfAbsent((int) Math.round(lightness / STEP), shade -> new ArrayList<>())
                    .addAll(leaf.steps());
        } else {
            marks.add(new Mark.Area(leaf, shade(lightness)));
        }
    }

    /// Draws leaves in few shades, the dark ones under the light ones: one area a shade, which keeps a leafy plant
    /// small.
    void leavesByShade(Runnable leaves) {
        gathering = true;
        leaves.run();
        gathering = false;
        gathered.forEach((shade, steps) -> marks.add(new Mark.Area(new Path(steps), shade(shade * STEP))));
        gathered.clear();
    }

    /// A blade of grass: rises, bends over, ends in a point.
    void blade(double px, double bendX, double bendY, double tipX, double tipY, double width, double lightness) {
        marks.add(new Mark.Area(
                Path.from(x(px - width / 2), y(0))
                        .curve(
                                x(px + (bendX - px) * 0.2 - width / 2),
                                y(bendY * 0.6),
                                x(bendX - width / 2),
                                y(bendY + width / 2),
                                x(tipX),
                                y(tipY))
                        .curve(
                                x(bendX + width / 2),
                                y(bendY - width / 2),
                                x(px + (bendX - px) * 0.2 + width / 2),
                                y(bendY * 0.6),
                                x(px + width / 2),
                                y(0))
                        .close()
                        .build(),
                shade(lightness)));
    }

    /// A closed outline in foliage color; points from the foot, x and y in turn.
    void outline(double lightness, double... xy) {
        double[] placed = new double[xy.length];
        for (int i = 0; i < xy.length; i += 2) {
            placed[i] = x(xy[i]);
            placed[i + 1] = Math.min(y(xy[i + 1]), groundY);
        }
        marks.add(new Mark.Area(Path.smooth(placed), shade(lightness)));
    }

    /// A fine line in the color of the page's rules, such as a post or a wire.
    void support(double x0, double y0, double x1, double y1, double width) {
        marks.add(new Mark.Line(Path.line(x(x0), y(y0), x(x1), y(y1)), Ink.Role.LINE, width));
    }

    private static double cos(double angle) {
        return Math.cos(angle);
    }

    private static double sin(double angle) {
        return Math.sin(angle);
    }
}
