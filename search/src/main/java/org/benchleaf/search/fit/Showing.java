package org.benchleaf.search.fit;

import java.time.Month;
import java.util.List;
import java.util.Optional;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.shared.color.ColorFamily;
import org.benchleaf.shared.color.Lab;
import org.benchleaf.shared.color.PlantColor;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Season;

/// How well a plant shows what is asked for: how far its color stands out, and how much of the time. All scales are
/// ours, no source.
final class Showing {
    private Showing() {}

    /// The mean of what is known of color and time, 0 to 4.
    static int quarters(Wish.Shows wish, Facts facts) {
        int color = wish.color().map(asked -> like(wish.season(), asked, facts)).orElseGet(() -> strength(wish, facts));
        Optional<MonthSet> asked = wish.months().filter(months -> !months.isEmpty());
        return asked.map(months -> Math.round((color + time(months, months(wish.season(), facts))) / 2f))
                .orElse(color);
    }

    /// How far the colors of a season stand out, 0 to 4: brown pods are fruit, and nobody plants for them.
    static int strength(Season season, Facts facts) {
        return colors(season, facts).stream()
                .mapToInt(color -> strength(season, color))
                .max()
                .orElse(0);
    }

    private static int strength(Wish.Shows wish, Facts facts) {
        return strength(wish.season(), facts);
    }

    private static int strength(Season season, PlantColor color) {
        Lab lab = color.srgb().lab();
        double chroma = Math.hypot(lab.a(), lab.b());
        int vivid = chroma >= 45 ? 4 : chroma >= 30 ? 3 : chroma >= 18 ? 2 : 1;
        return switch (color.family()) {
            case RED, ORANGE, YELLOW, PINK, PURPLE, BLUE -> vivid;
            case WHITE -> 3;
            case GREEN, BLUE_GREEN ->
                season == Season.FOLIAGE && !color.word().endsWith("green") ? vivid : season == Season.STEM ? 2 : 0;
            case GRAY, BLACK -> season == Season.FOLIAGE ? 3 : 1;
            case BROWN -> 1;
        };
    }

    /// The very word asked for, or only something that looks like it.
    private static int like(Season season, ColorFamily asked, Facts facts) {
        List<PlantColor> colors = colors(season, facts);
        boolean first = colors.stream()
                .limit(1)
                .anyMatch(color -> ColorFamily.ofWord(color.word()).equals(Optional.of(asked)));
        boolean any = colors.stream()
                .anyMatch(color -> ColorFamily.ofWord(color.word()).equals(Optional.of(asked)));
        return first ? 4 : any ? 3 : 1;
    }

    /// One month: how near it is to the middle of the show. Several: how many of them the show lasts.
    private static int time(MonthSet asked, MonthSet known) {
        if (asked.size() > 1) {
            return Math.round(4f * asked.and(known).size() / asked.size());
        }
        Month month = Month.of(Integer.numberOfTrailingZeros(asked.bits()) + 1);
        int before = run(month, known, -1);
        int after = run(month, known, 1);
        return Math.max(0, 4 - Math.abs(before - after));
    }

    private static int run(Month from, MonthSet known, int step) {
        int months = 0;
        while (months < 6 && known.contains(from.plus((long) step * (months + 1)))) {
            months++;
        }
        return months;
    }

    private static List<PlantColor> colors(Season season, Facts facts) {
        return facts.value(switch (season) {
                    case FLOWER -> Attributes.FLOWER_COLOR;
                    case FOLIAGE -> Attributes.FOLIAGE_COLOR;
                    case FALL_COLOR -> Attributes.FALL_COLOR;
                    case FRUIT -> Attributes.FRUIT_COLOR;
                    case STEM -> Attributes.STEM_COLOR;
                })
                .orElse(List.of());
    }

    private static MonthSet months(Season season, Facts facts) {
        return switch (season) {
            case FLOWER -> facts.value(Attributes.BLOOM).orElse(MonthSet.NONE);
            case FRUIT -> facts.value(Attributes.FRUIT).orElse(MonthSet.NONE);
            case STEM -> facts.value(Attributes.STEM_MONTHS).orElse(MonthSet.NONE);
            case FALL_COLOR -> facts.value(Attributes.FALL_MONTHS).orElse(SeasonJudge.USUAL_FALL);
            case FOLIAGE -> MonthSet.ALL;
        };
    }
}
