package org.benchleaf.render.figure;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.benchleaf.content.Wording;
import org.benchleaf.render.page.Show;
import org.benchleaf.render.page.YearLook;
import org.benchleaf.shared.color.Srgb;
import org.benchleaf.shared.measure.MonthSet;

/// The year of a plant on one low strip, for lists: blossoms above, leaves in the middle, below berries or twigs. What
/// a mark stands for is told by its place and its shape, so that it can be read without seeing the color.
public final class YearStrip {
    /// Width of a month in points on the strip of a list, and on a chart.
    public static final double NARROW = 7;

    public static final double WIDE = 21;

    private static final double HEIGHT = 19;

    private static final double FLOWER = 4;
    private static final double LEAF = 9.6;
    private static final double FRUIT = 15.2;

    private final List<Mark> marks = new ArrayList<>();

    private final double month;

    private YearStrip(double month) {
        this.month = month;
    }

    /// @param month width of a month in points
    /// @param name of the plant, for the text alternative
    public static Figure draw(YearLook year, double month, String name, Wording words) {
        YearStrip strip = new YearStrip(month);
        strip.months();
        year.stem().ifPresent(strip::stems);
        year.fruit().ifPresent(strip::fruit);
        strip.leaves(year);
        year.flower().ifPresent(strip::flowers);
        String what = year.isUnknown() ? words.text("strip.unknown") : YearWords.alternative(year, words);
        return new Figure(
                12 * month,
                HEIGHT,
                strip.marks,
                words.text("ring.title", Map.of("name", name)),
                words.text("strip.alternative", Map.of("name", name, "what", what)));
    }

    /// The letters of the months, above a column of strips.
    ///
    /// @param width of a month in points
    public static Figure head(double width, Wording words) {
        List<Mark> marks = new ArrayList<>();
        String[] letters = words.text("months.letters").split(" ");
        for (int month = 0; month < 12; month++) {
            marks.add(new Mark.Words(
                    (month + 0.5) * width, 6.4, letters[month], 6.8, false, Ink.Role.SOFT, Mark.Anchor.MIDDLE));
        }
        String year = words.text("table.year");
        return new Figure(12 * width, 8, marks, year, year);
    }

    private void months() {
        marks.add(new Mark.Line(Path.line(0, LEAF, 12 * month, LEAF), Ink.Role.TRACK, 0.5));
        for (int edge = 0; edge <= 12; edge += 3) {
            marks.add(new Mark.Line(Path.line(edge * month, 1, edge * month, HEIGHT - 1), Ink.Role.TRACK, 0.4));
        }
    }

    private void flowers(Show show) {
        int times = (int) Math.floor(month / 3.5);
        double step = month / times;
        each(show, times, (left, color, count) -> shape(Path.circle(left + (count + 0.5) * step, FLOWER, 1.75), color));
    }

    private void fruit(Show show) {
        int times = (int) Math.floor(month / 7);
        each(show, times, (left, color, count) -> {
            double r = 2.1;
            double x = left + (count + 0.5) * month / times;
            shape(
                    Path.from(x, FRUIT - r)
                            .line(x + r, FRUIT)
                            .line(x, FRUIT + r)
                            .line(x - r, FRUIT)
                            .close()
                            .build(),
                    color);
        });
    }

    private void stems(Show show) {
        int times = (int) Math.floor(month / 7);
        each(show, times, (left, color, count) -> {
            double x = left + (count + 0.5) * month / times;
            Ink edge = new Ink.Plant(edge(color));
            Path twig = Path.line(x - 1.4, HEIGHT - 1.2, x + 1.4, FRUIT - 2.2);
            marks.add(new Mark.Line(twig, edge, 1.7));
            marks.add(new Mark.Line(twig, new Ink.Plant(color), 1));
        });
    }

    /// A full bar in leaf, a low one where many have fallen, none when bare; colored leaves of fall stand as teeth.
    private void leaves(YearLook year) {
        MonthSet fall = year.fallFoliage().isEmpty() ? MonthSet.NONE : YearBands.fallMonths(year);
        for (Map.Entry<Month, YearBands.Leaves> worn : YearBands.foliage(year).entrySet()) {
            double left = worn.getKey().ordinal() * month;
            List<Srgb> colors = worn.getValue().colors();
            boolean falling = fall.contains(worn.getKey());
            double height = worn.getValue().sparse() ? 1.8 : 4.2;
            if (falling) {
                int teeth = (int) Math.round(month / 2.333);
                for (int tooth = 0; tooth < teeth; tooth++) {
                    tooth(left + tooth * month / teeth, month / teeth, colors.get(tooth % colors.size()));
                }
            } else {
                Srgb color = colors.getFirst();
                marks.add(new Mark.Area(Path.rectangle(left, LEAF - height / 2, month, height), new Ink.Plant(color)));
                Ink edge = new Ink.Plant(edge(color));
                marks.add(
                        new Mark.Line(Path.line(left, LEAF + height / 2, left + month, LEAF + height / 2), edge, 0.35));
                marks.add(
                        new Mark.Line(Path.line(left, LEAF - height / 2, left + month, LEAF - height / 2), edge, 0.35));
            }
        }
    }

    private void tooth(double left, double width, Srgb color) {
        shape(
                Path.from(left, LEAF + 2.1)
                        .line(left + width / 2, LEAF - 2.6)
                        .line(left + width, LEAF + 2.1)
                        .close()
                        .build(),
                color);
    }

    private interface Each {
        void at(double left, Srgb color, int count);
    }

    private void each(Show show, int times, Each each) {
        List<Srgb> colors = show.colors().isEmpty() ? List.of(YearBands.UNSTATED) : YearBands.colors(show.colors());
        int count = 0;
        for (Month shown : Month.values()) {
            if (show.months().contains(shown)) {
                for (int time = 0; time < times; time++) {
                    each.at(shown.ordinal() * month, colors.get(count % colors.size()), time);
                    count++;
                }
            }
        }
    }

    private void shape(Path path, Srgb color) {
        marks.add(new Mark.Area(path, new Ink.Plant(color)));
        marks.add(new Mark.Line(path, new Ink.Plant(edge(color)), 0.4));
    }

    private static Srgb edge(Srgb color) {
        return Tint.darker(color, color.luminance() > 0.5 ? 0.45 : 0.34);
    }
}
