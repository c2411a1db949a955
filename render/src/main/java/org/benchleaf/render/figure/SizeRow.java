package org.benchleaf.render.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.benchleaf.content.Wording;
import org.benchleaf.render.page.SizeLook;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.plant.Habit;

/// Several plants on one ground at one scale, each in its own column, beside the same person and rule: which is taller
/// is seen before it is read.
public final class SizeRow {
    private static final double TOP = 5;
    private static final double FOOT = 24;
    private static final double TYPE = 7.8;
    /// Mean width of a character of the sans face, bold, of its size; a little more than it is.
    private static final double CHARACTER = 0.52;

    private final List<Mark> marks = new ArrayList<>();
    private final Wording words;
    private final double ground;

    private SizeRow(Wording words, double ground) {
        this.words = words;
        this.ground = ground;
    }

    /// One of the plants.
    public record Plant(String name, SizeLook size) {}

    /// @param side width in points for person and rule
    /// @param column width in points for each plant
    /// @param height of the figure in points
    public static Figure draw(List<Plant> plants, double side, double column, double height, Wording words) {
        SizeRow row = new SizeRow(words, height - FOOT);
        double width = side + column * plants.size();
        row.draw(plants, side, column);
        row.marks.add(new Mark.Line(Path.line(0.5, row.ground, width - 0.5, row.ground), Ink.Role.LINE, 0.6));
        return new Figure(
                width,
                height,
                row.marks,
                words.text("comparison.size"),
                plants.stream()
                        .map(plant -> words.text(
                                "strip.alternative",
                                Map.of(
                                        "name",
                                        plant.name(),
                                        "what",
                                        SizeWords.alternative(plant.size(), false, words))))
                        .collect(Collectors.joining(" ")));
    }

    private void draw(List<Plant> plants, double side, double column) {
        double room = ground - TOP;
        double tallest = Scale.RULE_CM * 1.04;
        double widest = 1;
        for (Plant plant : plants) {
            tallest = Math.max(
                    tallest, plant.size().height().map(LengthRange::highCm).orElse(0) * 1.02);
            widest = Math.max(widest, spread(plant.size()));
        }
        double scale = Math.min(room / tallest, (column - 44) / widest);
        List<Mark> figures = new ArrayList<>(Scale.rule(6, ground, scale));
        figures.addAll(Scale.person(14 + 27 * scale, ground, scale));
        marks.add(new Mark.Within(0, 0, side, ground, figures));
        say(0.5, 1, words.text("stand.person." + words.lengths().name()), false, side);
        say(0.5, 2, words.text("stand.rule." + words.lengths().name()), false, side);
        double left = side;
        for (Plant plant : plants) {
            plant(plant.size(), left, column, scale);
            left += column;
        }
    }

    private void plant(SizeLook size, double left, double column, double scale) {
        if (size.height().isEmpty()) {
            say(left, 1, words.text("stand.unknown"), false, column);
            return;
        }
        LengthRange height = size.height().get();
        double half = spread(size) * scale / 2;
        double middle = Math.max(half + 1, Math.min(column * 0.4, column - 22 - half));
        double x = left + middle;
        marks.addAll(Silhouettes.draw(size, x, ground, half * 2, height.middleCm() * scale));
        double bracket = x + half + 6;
        double low = ground - height.lowCm() * scale;
        double high = ground - height.highCm() * scale;
        marks.add(new Mark.Line(Path.line(bracket, ground, bracket, high), Ink.Role.LINE, 0.4));
        marks.add(new Mark.Line(Path.line(bracket, low, bracket, high), Ink.Role.LINE, 1.2));
        marks.add(new Mark.Line(Path.line(bracket - 2.5, high, bracket + 2.5, high), Ink.Role.LINE, 0.6));
        say(left, 1, words.text("card.height", Map.of("height", words.length(height))), true, column);
        size.spread()
                .ifPresent(wide ->
                        say(left, 2, words.text("stand.wide", Map.of("spread", words.length(wide))), false, column));
    }

    private static double spread(SizeLook size) {
        return size.spread()
                .map(LengthRange::middleCm)
                .orElseGet(() -> Optional.of(size)
                                .flatMap(SizeLook::height)
                                .map(LengthRange::middleCm)
                                .orElse(100.0)
                        * Silhouettes.usualProportion(size.habit().orElse(Habit.ROUNDED)));
    }

    /// @param room width in points; longer words, as of two units at once, are set smaller
    private void say(double x, int line, String text, boolean strong, double room) {
        double type = Math.min(TYPE, (room - 4) / (CHARACTER * text.length()));
        marks.add(new Mark.Words(
                x,
                ground + 2.5 + line * 9.2,
                text,
                type,
                strong,
                strong ? Ink.Role.TEXT : Ink.Role.SOFT,
                Mark.Anchor.START));
    }
}
