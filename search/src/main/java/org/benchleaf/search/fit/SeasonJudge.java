package org.benchleaf.search.fit;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.shared.color.ColorFamily;
import org.benchleaf.shared.color.PlantColor;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.need.Reason.Shortfall;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Foliage;

/// Whether a plant is worth looking at: for what, in which color, in which months.
final class SeasonJudge {
    /// A color this near to a family's swatch (CIEDE2000) passes for the family, whatever its word. Ours, no
    /// source.
    private static final double PASSES_FOR = 18;

    /// When fall color is seen where a plant does not say. Common practice for the northern states, no source.
    static final MonthSet USUAL_FALL = MonthSet.between(Month.OCTOBER, Month.NOVEMBER);

    private static final MonthSet SPRING = MonthSet.between(Month.MARCH, Month.MAY);
    private static final MonthSet WINTER = MonthSet.between(Month.DECEMBER, Month.FEBRUARY);

    private SeasonJudge() {}

    static Reason judge(Wish.Shows wish, Facts facts) {
        return switch (wish.season()) {
            case FLOWER -> judge(wish, facts, Attributes.FLOWER_COLOR, Attributes.BLOOM);
            case FRUIT -> judge(wish, facts, Attributes.FRUIT_COLOR, Attributes.FRUIT);
            case STEM -> stem(wish, facts);
            case FALL_COLOR -> fallColor(wish, facts);
            case FOLIAGE -> foliage(wish, facts);
        };
    }

    private static Reason judge(
            Wish.Shows wish, Facts facts, Attribute<List<PlantColor>> color, Attribute<MonthSet> months) {
        return judge(wish, facts.fact(color), facts.fact(months), facts.value(months));
    }

    private static Reason judge(
            Wish.Shows wish,
            Optional<Fact<List<PlantColor>>> colors,
            Optional<Fact<MonthSet>> months,
            Optional<MonthSet> shown) {
        if (colors.isPresent() && colors.get().value().isEmpty()) {
            return new Reason.Missed(wish, FitJudge.seen(colors.get()), new Shortfall.NotSo());
        }
        Optional<Shortfall> otherColor =
                wish.color().flatMap(asked -> colors.flatMap(fact -> away(fact.value(), asked)));
        Optional<Shortfall> otherMonths =
                askedMonths(wish).flatMap(asked -> shown.flatMap(known -> monthsAway(known, asked)));
        Optional<Shortfall> shortfall = otherColor.or(() -> otherMonths);
        if (shortfall.isPresent()) {
            return new Reason.Missed(wish, seen(colors, months), shortfall.get());
        }
        boolean unknown = wish.color().isPresent() && colors.isEmpty()
                || askedMonths(wish).isPresent() && shown.isEmpty()
                || colors.isEmpty() && months.isEmpty();
        return unknown ? new Reason.Unknown(wish) : new Reason.Met(wish, seen(colors, months));
    }

    private static Reason stem(Wish.Shows wish, Facts facts) {
        Reason reason = judge(wish, facts, Attributes.STEM_COLOR, Attributes.STEM_MONTHS);
        boolean anyStem = wish.color().isEmpty() && askedMonths(wish).isEmpty();
        // a note such as "peeling bark" says that the stems are worth looking at, not when or in which color
        return reason instanceof Reason.Unknown && anyStem
                ? FitJudge.when(wish, facts.fact(Attributes.STEM_NOTE), note -> Optional.empty())
                : reason;
    }

    private static Reason fallColor(Wish.Shows wish, Facts facts) {
        Optional<Fact<List<PlantColor>>> colors = facts.fact(Attributes.FALL_COLOR);
        if (colors.isEmpty()) {
            return facts.fact(Attributes.FOLIAGE)
                    .filter(foliage -> foliage.value() == Foliage.EVERGREEN)
                    .<Reason>map(foliage -> new Reason.Missed(wish, FitJudge.seen(foliage), new Shortfall.NotSo()))
                    .orElseGet(() -> new Reason.Unknown(wish));
        }
        Optional<Fact<MonthSet>> months = facts.fact(Attributes.FALL_MONTHS);
        return judge(wish, colors, months, months.map(Fact::value).or(() -> Optional.of(USUAL_FALL)));
    }

    private static Reason foliage(Wish.Shows wish, Facts facts) {
        Optional<Fact<Foliage>> persistence = facts.fact(Attributes.FOLIAGE);
        MonthSet asked = askedMonths(wish).orElse(MonthSet.ALL);
        boolean winterOnly = asked.and(new MonthSet(0xFFF & ~WINTER.bits())).isEmpty();
        boolean bare = persistence
                .map(fact -> fact.value() == Foliage.DECIDUOUS || fact.value() == Foliage.HERBACEOUS)
                .orElse(false);
        if (winterOnly && bare) {
            return new Reason.Missed(wish, FitJudge.seen(persistence.orElseThrow()), new Shortfall.NotSo());
        }
        List<Fact<List<PlantColor>>> seen = leavesIn(asked, askedMonths(wish).isEmpty(), facts);
        List<PlantColor> colors =
                seen.stream().flatMap(fact -> fact.value().stream()).toList();
        if (seen.isEmpty()
                || winterOnly
                        && persistence.isEmpty()
                        && facts.fact(Attributes.WINTER_FOLIAGE_COLOR).isEmpty()) {
            return new Reason.Unknown(wish);
        }
        Fact<List<PlantColor>> first = seen.getFirst();
        Reason.Seen what = new Reason.Seen(
                seen.stream().map(Fact::text).distinct().collect(Collectors.joining(" · ")),
                Optional.of(first.source()),
                first.inherited());
        Optional<Shortfall> shortfall = wish.color()
                .map(color -> away(colors, color))
                .orElseGet(() -> FitJudge.so(colors.stream().anyMatch(color -> !isPlainGreen(color))));
        return shortfall
                .<Reason>map(by -> new Reason.Missed(wish, what, by))
                .orElseGet(() -> new Reason.Met(wish, what));
    }

    /// The colors of the leaves in those months; a season that does not state its own has those of the year.
    private static List<Fact<List<PlantColor>>> leavesIn(MonthSet asked, boolean anyTime, Facts facts) {
        Optional<Fact<List<PlantColor>>> year = facts.fact(Attributes.FOLIAGE_COLOR);
        Optional<Fact<List<PlantColor>>> spring = facts.fact(Attributes.SPRING_FOLIAGE_COLOR);
        Optional<Fact<List<PlantColor>>> winter = facts.fact(Attributes.WINTER_FOLIAGE_COLOR);
        boolean inSpring = !asked.and(SPRING).isEmpty();
        boolean inWinter = !asked.and(WINTER).isEmpty();
        boolean otherwise = asked.bits() != (asked.bits() & (SPRING.bits() | WINTER.bits()));
        List<Fact<List<PlantColor>>> seen = new ArrayList<>();
        if (otherwise || anyTime || inSpring && spring.isEmpty() || inWinter && winter.isEmpty()) {
            year.ifPresent(seen::add);
        }
        if (inSpring) {
            spring.ifPresent(seen::add);
        }
        if (inWinter) {
            winter.ifPresent(seen::add);
        }
        return seen;
    }

    /// `green`, `dark green`: the color of most leaves, which nobody buys a plant for.
    private static boolean isPlainGreen(PlantColor color) {
        return color.word().equals("green") || color.word().endsWith(" green");
    }

    private static Optional<MonthSet> askedMonths(Wish.Shows wish) {
        return wish.months().filter(months -> !months.isEmpty());
    }

    private static Optional<Shortfall> away(List<PlantColor> colors, ColorFamily asked) {
        double nearest = Double.MAX_VALUE;
        for (PlantColor color : colors) {
            double difference = color.differenceTo(asked);
            if (color.family() == asked || difference <= PASSES_FOR) {
                return Optional.empty();
            }
            nearest = Math.min(nearest, difference);
        }
        return Optional.of(colors.isEmpty() ? new Shortfall.NotSo() : new Shortfall.OtherColor(nearest));
    }

    private static Optional<Shortfall> monthsAway(MonthSet known, MonthSet asked) {
        if (known.isEmpty()) {
            return Optional.of(new Shortfall.NotSo());
        }
        int apart = known.monthsApart(asked);
        return apart == 0 ? Optional.empty() : Optional.of(new Shortfall.Months(apart));
    }

    private static Reason.Seen seen(Optional<Fact<List<PlantColor>>> colors, Optional<Fact<MonthSet>> months) {
        List<Fact<?>> facts = Stream.<Optional<? extends Fact<?>>>of(colors, months)
                .flatMap(Optional::stream)
                .<Fact<?>>map(fact -> fact)
                .toList();
        if (facts.isEmpty()) {
            return Reason.Seen.own("");
        }
        String value = facts.stream().map(Fact::text).collect(Collectors.joining(" · "));
        return new Reason.Seen(
                value, Optional.of(facts.getFirst().source()), facts.getFirst().inherited());
    }
}
