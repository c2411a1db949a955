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
import org.benchleaf.shared.plant.Foliage;
import org.benchleaf.shared.plant.Season;

/// How well a plant shows what is asked for: how far its color stands out, and how much of the time. All scales are
/// ours, no source.
final class Showing {
    private Showing() {}

    private static final int BEST = 100;

    /// What a color that is not the most typical counts.
    private static final double OTHERS = 0.8;

    /// What the color asked for counts where the plant is more of another: river birch is cinnamon before cream.
    private static final double LESS_TYPICAL = 0.6;

    /// What a fall color near the ground counts.
    private static final double LOW = 0.5;

    /// What yellow counts in fall: the color of most trees then.
    private static final double USUAL = 0.6;

    /// The CIELAB chroma of a color that cannot be overlooked: about that of red twigs in snow.
    private static final double VIVID = 60;

    /// The mean of what is known of color and time, 0 to 100.
    static int hundredths(Wish.Shows wish, Facts facts) {
        int color = wish.color().map(asked -> like(wish.season(), asked, facts)).orElseGet(() -> strength(wish, facts));
        Optional<MonthSet> asked = wish.months().filter(months -> !months.isEmpty());
        return asked.map(months -> (color + time(months, months(wish.season(), facts))) / 2)
                .orElse(color);
    }

    /// How far the colors of a season stand out, 0 to 100: brown pods are fruit, and nobody plants for them.
    /// The most typical color stands first and counts in full.
    static int strength(Season season, Facts facts) {
        List<PlantColor> colors = colors(season, facts);
        double best = 0;
        for (int at = 0; at < colors.size(); at++) {
            best = Math.max(best, strength(season, colors.get(at)) * (at == 0 ? 1 : OTHERS));
        }
        return (int) Math.round(season == Season.FALL_COLOR && diesBack(facts) ? best * LOW : best);
    }

    /// The leaves of what dies to the ground are few and low: they may turn as red as a maple and nobody sees it.
    private static boolean diesBack(Facts facts) {
        return facts.value(Attributes.FOLIAGE)
                .filter(Foliage.HERBACEOUS::equals)
                .isPresent();
    }

    private static int strength(Wish.Shows wish, Facts facts) {
        return strength(wish.season(), facts);
    }

    private static double strength(Season season, PlantColor color) {
        Lab lab = color.srgb().lab();
        double vivid = Math.min(BEST, Math.hypot(lab.a(), lab.b()) * BEST / VIVID);
        return switch (color.family()) {
            case RED, ORANGE, PINK, PURPLE, BLUE -> vivid;
            case YELLOW -> season == Season.FALL_COLOR ? vivid * USUAL : vivid;
            case WHITE -> BEST * OTHERS;
            case GREEN, BLUE_GREEN ->
                season == Season.FOLIAGE && !color.word().endsWith("green")
                        ? vivid
                        : season == Season.STEM ? vivid / 2 : 0;
            case GRAY, BLACK -> season == Season.FOLIAGE ? BEST * OTHERS : 10;
            case BROWN -> season == Season.STEM ? vivid / 2 : 10;
        };
    }

    /// The very word asked for, or only something that looks like it.
    private static int like(Season season, ColorFamily asked, Facts facts) {
        List<PlantColor> colors = colors(season, facts);
        for (int at = 0; at < colors.size(); at++) {
            if (ColorFamily.ofWord(colors.get(at).word()).equals(Optional.of(asked))) {
                return at == 0 ? BEST : (int) (BEST * LESS_TYPICAL);
            }
        }
        return BEST / 4;
    }

    /// One month: how near it is to the middle of the show. Several: how many of them the show lasts.
    private static int time(MonthSet asked, MonthSet known) {
        if (asked.size() > 1) {
            return BEST * asked.and(known).size() / asked.size();
        }
        Month month = Month.of(Integer.numberOfTrailingZeros(asked.bits()) + 1);
        int before = run(month, known, -1);
        int after = run(month, known, 1);
        return Math.max(0, BEST - Math.abs(before - after) * BEST / 4);
    }

    private static int run(Month from, MonthSet known, int step) {
        int months = 0;
        while (months < 6 && known.contains(from.plus((long) step * (months + 1)))) {
            months++;
        }
        return months;
    }

    private static List<PlantColor> colors(Season season, Facts facts) {
        return facts.value(Attributes.colors(season)).orElse(List.of());
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
