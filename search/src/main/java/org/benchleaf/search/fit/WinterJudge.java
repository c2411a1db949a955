package org.benchleaf.search.fit;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.shared.color.PlantColor;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.need.Reason.Shortfall;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Foliage;
import org.benchleaf.shared.plant.Season;

/// Whether a plant is worth looking at in winter, for whatever: stems, fruit that stays, leaves that stay, flowers.
/// Its outline would count as well, but the catalog has no fact of it that is about winter.
public final class WinterJudge {
    private static final MonthSet WINTER = MonthSet.between(Month.DECEMBER, Month.FEBRUARY);

    /// What green leaves that stay count, in hundredths: most of what is evergreen is planted for other reasons.
    private static final int LEAVES = 40;

    private static final int COLORED_LEAVES = 80;

    /// What is seen in its months, what stands out most first.
    private static final List<Show> SHOWS = List.of(
            new Show(Season.STEM, Attributes.STEM_COLOR, Attributes.STEM_MONTHS),
            new Show(Season.FRUIT, Attributes.FRUIT_COLOR, Attributes.FRUIT),
            new Show(Season.FLOWER, Attributes.FLOWER_COLOR, Attributes.BLOOM));

    private WinterJudge() {}

    static Reason judge(Wish.ShowsInWinter wish, Facts facts) {
        List<Sight> sights = new ArrayList<>();
        SHOWS.forEach(show -> show.sight(facts).ifPresent(sights::add));
        leaves(facts).ifPresent(fact -> sights.add(new Sight(Season.FOLIAGE, fact)));
        if (!sights.isEmpty()) {
            Fact<?> first = sights.getFirst().fact();
            String text = sights.stream()
                    .map(sight -> sight.season().term() + ": " + sight.fact().text())
                    .collect(Collectors.joining(" · "));
            return new Reason.Met(wish, new Reason.Seen(text, Optional.of(first.source()), first.inherited()));
        }
        // what dies to the ground and is not said to stand shows nothing; of the rest it is only not stated
        return facts.fact(Attributes.FOLIAGE)
                .filter(foliage -> foliage.value() == Foliage.HERBACEOUS)
                .<Reason>map(foliage -> new Reason.Missed(wish, FitJudge.seen(foliage), new Shortfall.NotSo()))
                .orElseGet(() -> new Reason.Unknown(wish));
    }

    /// How far it stands out, 0 to 100.
    static int hundredths(Facts facts) {
        int best = SHOWS.stream()
                .filter(show -> show.isSeen(facts))
                .mapToInt(show -> Showing.strength(show.season(), facts))
                .max()
                .orElse(0);
        int leaves =
                winterColors(facts).isPresent() ? COLORED_LEAVES : leaves(facts).isPresent() ? LEAVES : 0;
        return Math.max(best, leaves);
    }

    /// The facts that the wish looks at and no others, so that alike plants stay alike in the index.
    public static Facts essence(Facts facts) {
        List<Fact<?>> kept = new ArrayList<>();
        for (Show show : SHOWS) {
            if (show.isSeen(facts)) {
                facts.fact(show.color()).ifPresent(kept::add);
                facts.fact(show.months()).ifPresent(kept::add);
            }
        }
        facts.fact(Attributes.FOLIAGE).ifPresent(kept::add);
        facts.fact(Attributes.WINTER_FOLIAGE_COLOR).ifPresent(kept::add);
        return Facts.of(kept);
    }

    /// Leaves that are there in winter.
    private static Optional<Fact<?>> leaves(Facts facts) {
        return winterColors(facts)
                .<Fact<?>>map(leaves -> leaves)
                .or(() -> facts.fact(Attributes.FOLIAGE).filter(foliage -> foliage.value() == Foliage.EVERGREEN));
    }

    /// Leaves of another color in winter, and grass that stands.
    private static Optional<Fact<List<PlantColor>>> winterColors(Facts facts) {
        return facts.fact(Attributes.WINTER_FOLIAGE_COLOR)
                .filter(leaves -> !leaves.value().isEmpty());
    }

    /// A color and when it is seen.
    private record Show(Season season, Attribute<List<PlantColor>> color, Attribute<MonthSet> months) {
        boolean isSeen(Facts facts) {
            return sight(facts).isPresent();
        }

        Optional<Sight> sight(Facts facts) {
            boolean none = facts.value(color).map(List::isEmpty).orElse(false);
            return facts.fact(months)
                    .filter(when -> !none && !when.value().and(WINTER).isEmpty())
                    .map(when -> new Sight(
                            season,
                            facts.fact(color).<Fact<?>>map(known -> known).orElse(when)));
        }
    }

    /// What is seen of a plant, and the fact that says so.
    private record Sight(Season season, Fact<?> fact) {}
}
