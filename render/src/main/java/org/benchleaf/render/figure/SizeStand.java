package org.benchleaf.render.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.content.Wording;
import org.benchleaf.render.page.SizeLook;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.plant.Habit;

/// The size stand: the plant grown, and at ten years, drawn to scale beside a person of 1.70 m and a rule of 2 m. The
/// scale fits the tallest; beside a low groundcover only the person's legs are in the picture.
public final class SizeStand {
    private static final double FOOT = 30;
    private static final double TOP = 8;
    private static final double SIDE = 54;
    private static final double TYPE = 7.2;
    /// What stays free beside two plants.
    private static final double SPARE = 16;
    /// A plant lower than this, in cm, is shown enlarged, the person cut off at the top.
    private static final double LOW_CM = 80;

    private final double width;
    private final double ground;
    private final SizeLook size;
    private final Wording words;
    private final List<Mark> marks = new ArrayList<>();
    private boolean tenYearsShown;
    private boolean winterShown;

    private SizeStand(SizeLook size, double width, double height, Wording words) {
        this.size = size;
        this.width = width;
        this.ground = height - FOOT;
        this.words = words;
        choose();
    }

    /// @param name of the plant, for the title
    /// @param width of the figure in points, 220 or more
    /// @param height of the figure in points, 110 or more
    public static Figure draw(SizeLook size, String name, double width, double height, Wording words) {
        SizeStand stand = new SizeStand(size, width, height, words);
        stand.draw();
        return new Figure(
                width, height, stand.marks, words.text("stand.title", Map.of("name", name)), stand.alternative());
    }

    /// What the figure says, in words, without drawing it.
    ///
    /// @param width of the figure in points
    public static String alternative(SizeLook size, double width, Wording words) {
        return new SizeStand(size, width, FOOT, words).alternative();
    }

    private String alternative() {
        boolean bare = winterShown || tenYearsShown && Silhouettes.isBareInWinter(size);
        return SizeWords.alternative(size, bare, words);
    }

    /// Too narrow for two: the grown plant in leaf is the one to show, the other is told in the facts.
    private void choose() {
        tenYearsShown = size.heightTenYears().isPresent();
        tenYearsShown = tenYearsShown && needed(0) + SPARE <= width;
        // stems that are worth a look are shown; without a size at ten years on the grown plant
        winterShown = size.heightTenYears().isEmpty()
                && size.height().isPresent()
                && size.stem().isPresent()
                && Silhouettes.isBareInWinter(size);
        winterShown = winterShown && needed(0) + SPARE <= width;
    }

    private void draw() {
        double tallest = Math.max(
                size.height().map(LengthRange::highCm).orElse(0),
                size.heightTenYears().map(LengthRange::highCm).orElse(0));
        double view = tallest == 0
                ? Scale.RULE_CM * 1.1
                : tallest < LOW_CM ? Math.max(tallest * 1.5, 40) : Math.max(tallest * 1.02, Scale.RULE_CM * 1.04);
        double room = ground - TOP;
        double scale = room / view;
        while (scale > 0.001 && needed(scale) > width) {
            scale *= 0.985;
        }
        double spare = Math.max(0, width - needed(scale));
        double left = sideWidth(scale);
        scaleFigures(left, scale);
        double at = left + spare * (tenYearsShown || winterShown ? 0.22 : 0.36);
        if (tenYearsShown) {
            double column = column(tenYearSpread(), scale, leastTenYears());
            tenYears(at + column / 2, scale);
            at += column + 10 + spare * 0.3;
        }
        if (winterShown) {
            double column = column(matureSpread(), scale, leastTenYears());
            winter(at + column / 2, scale);
            at += column + 10 + spare * 0.3;
        }
        if (size.height().isPresent()) {
            double column = column(matureSpread(), scale, 66);
            mature(at + column / 2, scale);
        } else {
            marks.add(new Mark.Words(
                    left + (width - left) / 2,
                    ground - room / 2,
                    words.text("stand.unknown"),
                    9,
                    false,
                    Ink.Role.SOFT,
                    Mark.Anchor.MIDDLE));
        }
        marks.add(new Mark.Line(Path.line(0.5, ground, width - 0.5, ground), Ink.Role.LINE, 0.6));
    }

    private double needed(double scale) {
        double tenYears = tenYearsShown ? column(tenYearSpread(), scale, leastTenYears()) + 10 : 0;
        double winter = winterShown ? column(matureSpread(), scale, leastTenYears()) + 10 : 0;
        double mature = size.height().isPresent() ? column(matureSpread(), scale, 66) + SIDE : 0;
        return sideWidth(scale) + 6 + tenYears + winter + mature;
    }

    /// Room for the words below it.
    private double leastTenYears() {
        return Silhouettes.isBareInWinter(size) ? 58 : 52;
    }

    private static double column(double spreadCm, double scale, double least) {
        return Math.max(least, spreadCm * scale);
    }

    private static double sideWidth(double scale) {
        return Math.max(64, 14 + 62 * scale);
    }

    private Habit habit() {
        return size.habit().orElse(Habit.ROUNDED);
    }

    private double matureSpread() {
        return spread(size.spread(), size.height());
    }

    private double tenYearSpread() {
        if (size.spreadTenYears().isPresent()) {
            return size.spreadTenYears().get().middleCm();
        }
        // keeps the proportion of the grown plant
        double grown = size.height().map(LengthRange::middleCm).orElse(1.0);
        return matureSpread() * size.heightTenYears().map(LengthRange::middleCm).orElse(grown) / grown;
    }

    private double spread(Optional<LengthRange> stated, Optional<LengthRange> height) {
        return stated.map(LengthRange::middleCm)
                .orElseGet(
                        () -> height.map(LengthRange::middleCm).orElse(100.0) * Silhouettes.usualProportion(habit()));
    }

    private void scaleFigures(double left, double scale) {
        List<Mark> figures = new ArrayList<>();
        double personX = 10 + 27 * scale + 4;
        figures.addAll(Scale.rule(6, ground, scale));
        figures.addAll(Scale.person(personX, ground, scale));
        marks.add(new Mark.Within(0, 0, left + 4, ground, figures));
        note(3.5, 1, "stand.person." + words.lengths().name(), Mark.Anchor.START);
        note(3.5, 2, "stand.rule." + words.lengths().name(), Mark.Anchor.START);
    }

    private void note(double x, int line, String key, Mark.Anchor anchor) {
        say(x, line, words.text(key), false, anchor);
    }

    private void say(double x, int line, String text, boolean strong, Mark.Anchor anchor) {
        marks.add(new Mark.Words(
                x, ground + 3 + line * 9.2, text, TYPE, strong, strong ? Ink.Role.TEXT : Ink.Role.SOFT, anchor));
    }

    private void tenYears(double x, double scale) {
        LengthRange height = size.heightTenYears().orElseThrow();
        marks.addAll(Silhouettes.inWinter(size, x, ground, tenYearSpread() * scale, height.middleCm() * scale));
        note(x, 1, Silhouettes.isBareInWinter(size) ? "stand.ten-years.winter" : "stand.ten-years", Mark.Anchor.MIDDLE);
        say(x, 2, words.length(height), true, Mark.Anchor.MIDDLE);
    }

    private void winter(double x, double scale) {
        LengthRange height = size.height().orElseThrow();
        marks.addAll(Silhouettes.inWinter(size, x, ground, matureSpread() * scale, height.middleCm() * scale));
        note(x, 1, "stand.winter", Mark.Anchor.MIDDLE);
    }

    private void mature(double x, double scale) {
        LengthRange height = size.height().orElseThrow();
        double half = matureSpread() * scale / 2;
        marks.addAll(Silhouettes.draw(size, x, ground, half * 2, height.middleCm() * scale));
        bracket(x + half + 7, height, scale);
        note(x, 1, "stand.mature", Mark.Anchor.MIDDLE);
        size.spread().ifPresent(spread -> {
            double y = ground + 5;
            double reach = spread.highCm() * scale / 2;
            double sure = spread.lowCm() * scale / 2;
            marks.add(new Mark.Line(Path.line(x - reach, y - 1.2, x + reach, y - 1.2), Ink.Role.LINE, 0.4));
            marks.add(new Mark.Line(Path.line(x - sure, y - 1.2, x + sure, y - 1.2), Ink.Role.LINE, 1.2));
            say(x, 2, words.text("stand.wide", Map.of("spread", words.length(spread))), true, Mark.Anchor.MIDDLE);
        });
    }

    /// The height: a line up to the usual high, strong from the usual low on.
    private void bracket(double x, LengthRange height, double scale) {
        double low = ground - height.lowCm() * scale;
        double high = ground - height.highCm() * scale;
        marks.add(new Mark.Line(Path.line(x, ground, x, high), Ink.Role.LINE, 0.4));
        marks.add(new Mark.Line(Path.line(x, low, x, high), Ink.Role.LINE, 1.2));
        marks.add(new Mark.Line(Path.line(x - 2.5, high, x + 2.5, high), Ink.Role.LINE, 0.6));
        String[] lines = words.length(height).split(" (?=\\()");
        double middle = Math.min((low + high) / 2, ground - 6) + 2.6;
        for (int line = 0; line < lines.length; line++) {
            marks.add(new Mark.Words(
                    x + 5, middle + line * 9.2, lines[line], TYPE + 0.6, true, Ink.Role.TEXT, Mark.Anchor.START));
        }
    }
}
