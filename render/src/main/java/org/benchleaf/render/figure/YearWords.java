package org.benchleaf.render.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.benchleaf.content.Wording;
import org.benchleaf.render.page.Show;
import org.benchleaf.render.page.YearLook;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.plant.Foliage;

/// What the year ring says, in words: beside it on paper, and as its text alternative.
public final class YearWords {
    /// One line of the key.
    ///
    /// @param part what shows, such as `Flower`
    /// @param what colors and months, such as `cream, Apr–May`
    public record Line(String part, String what) {}

    private YearWords() {}

    /// Lines from the outer ring to the inner one; empty when nothing is known.
    public static List<Line> lines(YearLook year, Wording words) {
        List<Line> lines = new ArrayList<>();
        year.flower().ifPresent(show -> add(lines, "ring.flower.line", show, words));
        String leaves = leaves(year, words);
        if (!leaves.isEmpty()) {
            lines.add(new Line(words.text("ring.foliage.line"), leaves));
        }
        if (!year.fallFoliage().isEmpty()) {
            add(lines, "ring.fall.line", new Show(year.fallFoliage(), YearBands.fallMonths(year)), words);
        }
        year.fruit().ifPresent(show -> add(lines, "ring.fruit.line", show, words));
        year.stem().ifPresent(show -> add(lines, "ring.stem.line", show, words));
        return lines;
    }

    /// Everything on the ring in sentences.
    public static String alternative(YearLook year, Wording words) {
        List<Line> lines = lines(year, words);
        return lines.isEmpty()
                ? words.text("ring.unknown")
                : lines.stream()
                        .map(line -> words.text("ring.alternative", Map.of("part", line.part(), "what", line.what())))
                        .collect(Collectors.joining(" "));
    }

    /// When it flowers, colors and fruits, the first two of them in one line; empty when no month is known.
    public static String seasons(YearLook year, Wording words) {
        List<String> parts = new ArrayList<>();
        year.flower().ifPresent(show -> parts.add(season("ring.flower.line", show.months(), words)));
        if (!year.fallFoliage().isEmpty()) {
            parts.add(season("ring.fall.line", YearBands.fallMonths(year), words));
        }
        year.fruit().ifPresent(show -> parts.add(season("ring.fruit.line", show.months(), words)));
        return words.sentence(
                String.join(words.text("list.comma"), parts.stream().limit(2).toList()));
    }

    private static String season(String part, MonthSet months, Wording words) {
        return words.text(part).toLowerCase(words.language()) + " " + words.months(months);
    }

    private static void add(List<Line> lines, String part, Show show, Wording words) {
        String colors = words.colors(show.colors());
        String months = words.months(show.months());
        String what = colors.isEmpty() || months.isEmpty()
                ? colors + months
                : words.text("ring.what", Map.of("colors", colors, "months", months));
        if (!what.isEmpty()) {
            lines.add(new Line(words.text(part), what));
        }
    }

    private static String leaves(YearLook year, Wording words) {
        List<String> parts = new ArrayList<>();
        String colors = words.colors(year.summerFoliage());
        if (!colors.isEmpty()) {
            parts.add(colors);
        }
        year.persistence()
                .filter(kept -> kept == Foliage.EVERGREEN || kept == Foliage.SEMI_EVERGREEN || colors.isEmpty())
                .ifPresent(kept -> parts.add(words.term(kept)));
        return String.join(words.text("list.comma"), parts);
    }
}
