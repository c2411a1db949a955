package org.benchleaf.search.fit;

import java.util.Set;
import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Fragrance;
import org.benchleaf.shared.site.DamageRating;
import org.benchleaf.shared.site.Moisture;
import org.benchleaf.shared.site.Tolerance;

/// How well a wish is met, in quarters: among plants that all meet a need, those made for it come first. All scales are
/// ours, no source. A wish looks at nothing here that it is not judged by.
final class HowWell {
    static final int BEST = 4;

    private HowWell() {}

    /// @return 0 for just met to 4 for as well as can be; 0 for wishes that know no more and less
    static int quarters(Wish wish, Facts facts) {
        return switch (wish) {
            case Wish.GrowsIn(var light) -> centered(facts, Attributes.EXPOSURE, light);
            case Wish.LikesSoil(var moisture) -> centered(facts, Attributes.MOISTURE, moisture);
            case Wish.Bears(var stress) -> bears(stress, facts);
            case Wish.LeftAloneBy(var browser) ->
                is(facts, browser == Wish.Browser.DEER ? Attributes.DEER : Attributes.RABBIT, DamageRating.RARELY);
            case Wish.Fragrant() -> is(facts, Attributes.FRAGRANCE, Fragrance.STRONG);
            case Wish.OfForm(var forms) ->
                facts.value(Attributes.LIFE_FORM).filter(forms::containsAll).isPresent() ? BEST : 0;
            case Wish.ServesAs serves ->
                Math.max(0, BEST + 1 - facts.value(Attributes.USES).map(Set::size).orElse(BEST + 1));
            case Wish.Shows shows -> Showing.quarters(shows, facts);
            default -> 0;
        };
    }

    /// A plant whose range lies around the site does better there than one that just reaches it: half a step of the
    /// vocabulary between the middle and the site is a quarter.
    private static <E extends Enum<E>> int centered(Facts facts, Attribute<Set<E>> attribute, E wanted) {
        double middle = facts.value(attribute).orElse(Set.of()).stream()
                .mapToInt(Enum::ordinal)
                .average()
                .orElse(Integer.MAX_VALUE);
        return (int) Math.max(0, BEST - Math.round(2 * Math.abs(middle - wanted.ordinal())));
    }

    /// A high tolerance, and for drought and wet feet a liking as well.
    private static int bears(Wish.Stress stress, Facts facts) {
        return switch (stress) {
            case DROUGHT -> bears(facts, Attributes.DROUGHT_TOLERANCE) + likes(facts, Moisture.DRY);
            case WET_FEET -> bears(facts, Attributes.WET_TOLERANCE) + likes(facts, Moisture.WET);
            case SALT_IN_SOIL -> bears(facts, Attributes.SALT_SOIL) + 1;
            case SALT_SPRAY -> bears(facts, Attributes.SALT_SPRAY) + 1;
            case COMPACTION -> bears(facts, Attributes.COMPACTION) + 1;
            case JUGLONE -> BEST;
        };
    }

    private static int bears(Facts facts, Attribute<Tolerance> attribute) {
        return is(facts, attribute, Tolerance.HIGH) == BEST ? BEST - 1 : 0;
    }

    private static int likes(Facts facts, Moisture moisture) {
        return facts.value(Attributes.MOISTURE)
                        .filter(liked -> liked.contains(moisture))
                        .isPresent()
                ? 1
                : 0;
    }

    private static <T> int is(Facts facts, Attribute<T> attribute, T best) {
        return facts.value(attribute).filter(best::equals).isPresent() ? BEST : 0;
    }
}
