package org.benchleaf.render.figure;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.benchleaf.content.Wording;
import org.benchleaf.render.page.Show;
import org.benchleaf.render.page.YearLook;
import org.benchleaf.shared.color.Srgb;

/// The year ring: twelve months round a circle that is open at the top, where each ring carries its name. From
/// outside: blossoms, leaves, fruit, stem, in the plant's own colors; what a ring shows is told by its place and its
/// shapes as well as by color. A ring without anything stays as a fine track.
public final class YearRing {
    private static final double SIZE = 176;
    private static final double CENTER = SIZE / 2;
    private static final double LETTERS = 80.5;
    private static final double FLOWER = 67;
    private static final double LEAF = 53.5;
    private static final double FRUIT = 40.5;
    private static final double STEM = 28.5;
    /// Half of the opening at the top, and the angle of a month, in radians.
    private static final double OPENING = Math.toRadians(24);
    private static final double MONTH = (2 * Math.PI - 2 * OPENING) / 12;

    private final List<Mark> marks = new ArrayList<>();
    private final Wording words;

    private YearRing(Wording words) {
        this.words = words;
    }

    /// @param name of the plant, for the title
    public static Figure draw(YearLook year, String name, Wording words) {
        YearRing ring = new YearRing(words);
        ring.dial();
        ring.track(FLOWER, "ring.flower");
        ring.track(LEAF, "ring.foliage");
        ring.track(FRUIT, "ring.fruit");
        ring.track(STEM, "ring.stem");
        year.stem().ifPresent(ring::stems);
        year.fruit().ifPresent(ring::fruit);
        ring.leaves(year);
        year.flower().ifPresent(ring::flowers);
        return new Figure(
                SIZE,
                SIZE,
                ring.marks,
                words.text("ring.title", Map.of("name", name)),
                YearWords.alternative(year, words));
    }

    /// Start of a month; 0 for January.
    private static double angle(double month) {
        return OPENING + month * MONTH;
    }

    private void dial() {
        String[] letters = words.text("months.letters").split(" ");
        for (int month = 0; month < 12; month++) {
            double middle = angle(month + 0.5);
            double x = CENTER + LETTERS * Math.sin(middle);
            double y = CENTER - LETTERS * Math.cos(middle);
            marks.add(new Mark.Words(x, y + 3.3, letters[month], 9.6, false, Ink.Role.SOFT, Mark.Anchor.MIDDLE));
        }
        for (int edge = 0; edge <= 12; edge++) {
            double a = angle(edge);
            marks.add(new Mark.Line(ray(a, STEM - 6, FLOWER + 7), Ink.Role.TRACK, edge % 3 == 0 ? 0.5 : 0.25));
        }
    }

    private static Path ray(double angle, double from, double to) {
        return Path.line(
                CENTER + from * Math.sin(angle),
                CENTER - from * Math.cos(angle),
                CENTER + to * Math.sin(angle),
                CENTER - to * Math.cos(angle));
    }

    private void track(double radius, String name) {
        marks.add(new Mark.Line(Path.arc(CENTER, CENTER, radius, angle(0), angle(12)), Ink.Role.TRACK, 0.6));
        marks.add(new Mark.Words(
                CENTER, CENTER - radius + 2.6, words.text(name), 7.8, false, Ink.Role.SOFT, Mark.Anchor.MIDDLE));
    }

    /// A color that shows on white: very light ones get a fine edge of a darker tint.
    private void shape(Path path, Srgb color) {
        marks.add(new Mark.Area(path, new Ink.Plant(color)));
        Srgb edge = Tint.darker(color, color.luminance() > 0.5 ? 0.38 : 0.34);
        marks.add(new Mark.Line(path, new Ink.Plant(edge), 0.4));
    }

    private void flowers(Show show) {
        List<Srgb> colors = orUnstated(YearBands.colors(show.colors()));
        int bloom = 0;
        for (Month month : Month.values()) {
            if (!show.months().contains(month)) {
                continue;
            }
            for (int place = 0; place < 3; place++) {
                double a = angle(month.ordinal() + (place + 0.5) / 3);
                double x = CENTER + FLOWER * Math.sin(a);
                double y = CENTER - FLOWER * Math.cos(a);
                Srgb color = colors.get(bloom++ % colors.size());
                shape(blossom(x, y, 5.7, a), color);
                shape(Path.circle(x, y, 1.15), Tint.mix(Tint.darker(color, 0.25), new Srgb(0xD9, 0xA9, 0x32), 0.55));
            }
        }
    }

    /// Five round petals.
    private static Path blossom(double x, double y, double radius, double turn) {
        Path.Builder path = null;
        for (int petal = 0; petal < 5; petal++) {
            double a = turn + petal * 2 * Math.PI / 5;
            double b = a + 2 * Math.PI / 5;
            double notch = radius * 0.44;
            double out = radius * 1.24;
            double x0 = x + notch * Math.sin(a);
            double y0 = y - notch * Math.cos(a);
            if (path == null) {
                path = Path.from(x0, y0);
            }
            double spread = 0.16;
            path.curve(
                    x + out * Math.sin(a + spread),
                    y - out * Math.cos(a + spread),
                    x + out * Math.sin(b - spread),
                    y - out * Math.cos(b - spread),
                    x + notch * Math.sin(b),
                    y - notch * Math.cos(b));
        }
        return java.util.Objects.requireNonNull(path).close().build();
    }

    private void leaves(YearLook year) {
        int leaf = 0;
        for (Map.Entry<Month, YearBands.Leaves> month : YearBands.foliage(year).entrySet()) {
            YearBands.Leaves worn = month.getValue();
            for (int place = 0; place < 4; place++) {
                double a = angle(month.getKey().ordinal() + (place + 0.5) / 4);
                boolean outward = leaf % 2 == 0;
                double length = worn.sparse() ? 6.6 : 11;
                shape(
                        leaf(a, outward ? 1.5 : -1.5, length, outward ? 0.5 : -0.5),
                        worn.colors().get(leaf / 2 % worn.colors().size()));
                leaf++;
            }
        }
    }

    /// A pointed leaf lying along the ring, tip clockwise, turned a little in or out as on a wreath.
    private static Path leaf(double angle, double offset, double length, double tilt) {
        double radius = LEAF + offset;
        double x = CENTER + radius * Math.sin(angle);
        double y = CENTER - radius * Math.cos(angle);
        double direction = angle - tilt;
        double dx = Math.cos(direction);
        double dy = Math.sin(direction);
        double half = length / 2;
        double belly = length * 0.4;
        return Path.from(x - dx * half, y - dy * half)
                .curve(
                        x - dx * half * 0.35 + dy * belly,
                        y - dy * half * 0.35 - dx * belly,
                        x + dx * half * 0.35 + dy * belly * 0.75,
                        y + dy * half * 0.35 - dx * belly * 0.75,
                        x + dx * half,
                        y + dy * half)
                .curve(
                        x + dx * half * 0.35 - dy * belly * 0.75,
                        y + dy * half * 0.35 + dx * belly * 0.75,
                        x - dx * half * 0.35 - dy * belly,
                        y - dy * half * 0.35 + dx * belly,
                        x - dx * half,
                        y - dy * half)
                .close()
                .build();
    }

    private void fruit(Show show) {
        List<Srgb> colors = orUnstated(YearBands.colors(show.colors()));
        int berry = 0;
        for (Month month : Month.values()) {
            if (!show.months().contains(month)) {
                continue;
            }
            for (int place = 0; place < 4; place++) {
                double a = angle(month.ordinal() + (place + 0.5) / 4);
                double radius = FRUIT + (place % 2 == 0 ? 1.5 : -1.5);
                Srgb color = colors.get(berry++ % colors.size());
                double x = CENTER + radius * Math.sin(a);
                double y = CENTER - radius * Math.cos(a);
                shape(Path.circle(x, y, 2.6), color);
                marks.add(
                        new Mark.Area(Path.circle(x - 0.75, y - 0.8, 0.55), new Ink.Plant(Tint.lighter(color, 0.65))));
            }
        }
    }

    private void stems(Show show) {
        List<Srgb> colors = orUnstated(YearBands.colors(show.colors()));
        List<Mark> faces = new ArrayList<>();
        for (Month month : Month.values()) {
            if (!show.months().contains(month)) {
                continue;
            }
            Srgb color = colors.get(month.ordinal() % colors.size());
            Ink edge = new Ink.Plant(Tint.darker(color, color.luminance() > 0.5 ? 0.38 : 0.18));
            double from = angle(month.ordinal());
            Path twig = Path.arc(CENTER, CENTER, STEM, from + 0.02, from + MONTH - 0.02);
            double bud = from + MONTH * 0.5;
            Path shoot = Path.line(
                    CENTER + STEM * Math.sin(bud),
                    CENTER - STEM * Math.cos(bud),
                    CENTER + (STEM + 4.4) * Math.sin(bud + 0.13),
                    CENTER - (STEM + 4.4) * Math.cos(bud + 0.13));
            marks.add(new Mark.Line(twig, edge, 4));
            marks.add(new Mark.Line(shoot, edge, 2.3));
            faces.add(new Mark.Line(twig, new Ink.Plant(color), 3.2));
            faces.add(new Mark.Line(shoot, new Ink.Plant(color), 1.6));
        }
        marks.addAll(faces);
    }

    private static List<Srgb> orUnstated(List<Srgb> colors) {
        return colors.isEmpty() ? List.of(YearBands.UNSTATED) : colors;
    }
}
