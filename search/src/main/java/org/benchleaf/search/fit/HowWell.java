package org.benchleaf.search.fit;

import java.util.Set;
import java.util.stream.Stream;
import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.shared.measure.HardinessZone;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Fragrance;
import org.benchleaf.shared.plant.LifeForm;
import org.benchleaf.shared.plant.Use;
import org.benchleaf.shared.plant.Wildlife;
import org.benchleaf.shared.site.DamageRating;
import org.benchleaf.shared.site.Moisture;
import org.benchleaf.shared.site.Tolerance;

/// How well a wish is met, in hundredths: among plants that all meet a need, those made for it come first. All
/// scales are ours, no source. A wish looks at nothing here that it is not judged by.
final class HowWell {
    static final int BEST = 100;

    /// What being known for it counts at least.
    private static final int KNOWN = 50;

    /// What the facts count, in hundredths, of a plant that is known for other things.
    private static final int UNSUNG = 50;

    /// What a liking for such a site adds to a tolerance of it.
    private static final int LIKING = 25;

    /// What a shrub that may grow into a tree counts where shrubs are asked for.
    private static final int EITHER = 70;

    /// So far within its range of hardiness a plant is sure, in half zones.
    private static final int SURE_HALF_ZONES = 2;

    private static final int SURE = 50;

    /// What a plant counts that is rated for the very zone: advice for cold places names it.
    private static final int COLD_END = 30;

    /// What just meeting a wish counts of meeting it as well as can be, in thousandths: a maple flowers, and nobody
    /// plants it for that.
    private static final int SHOWS = 600;

    private static final int SERVES = 500;
    private static final int NAMED = 200;
    private static final int USUALLY = 800;

    /// So many publishers that name a plant instead of another are as good as more.
    private static final int MANY = 5;

    private HowWell() {}

    /// Where a wish counts by degree: what just meeting it counts, in thousandths.
    static int least(Wish wish) {
        return switch (wish) {
            case Wish.Shows shows -> SHOWS;
            case Wish.ShowsInWinter() -> SHOWS;
            case Wish.ServesAs use -> SERVES;
            case Wish.NamedInstead named -> NAMED;
            default -> USUALLY;
        };
    }

    /// @return 0 for just met to 100 for as well as can be; 0 for wishes that know no more and less
    static int hundredths(Reason.Met met, Facts facts) {
        return met.wish() instanceof Wish.NamedInstead
                ? named(Integer.parseInt(met.seen().value()))
                : hundredths(met.wish(), facts);
    }

    /// Each who names a plant adds as much, and all after the fifth add nothing.
    private static int named(int publishers) {
        return BEST * Math.min(publishers - 1, MANY - 1) / (MANY - 1);
    }

    /// The same for a wish that a fact meets, whoever says so.
    static int hundredths(Wish wish, Facts facts) {
        int byFacts = byFacts(wish, facts);
        // who is named first stands first; where nobody said for what, the other facts alone speak
        return Renown.of(wish, facts)
                .map(known -> known ? known(wish, byFacts) : byFacts * UNSUNG / BEST)
                .orElse(byFacts);
    }

    /// Other uses only hint at how well a plant serves, and who is known for a use serves as well as can be; but of
    /// screens those are the best that stand as hedges too: dense to the ground.
    private static int known(Wish wish, int byFacts) {
        boolean hinted = wish instanceof Wish.ServesAs(var use) && use != Use.SCREEN;
        return hinted ? BEST : KNOWN + byFacts * (BEST - KNOWN) / BEST;
    }

    private static int byFacts(Wish wish, Facts facts) {
        return switch (wish) {
            case Wish.HardyIn(var zone) -> surely(zone, facts);
            case Wish.GrowsIn(var light) -> centered(facts, Attributes.EXPOSURE, light);
            case Wish.LikesSoil(var moisture) -> centered(facts, Attributes.MOISTURE, moisture);
            case Wish.Bears(var stress) -> bears(stress, facts);
            case Wish.LeftAloneBy(var browser) ->
                is(facts, browser == Wish.Browser.DEER ? Attributes.DEER : Attributes.RABBIT, DamageRating.RARELY);
            case Wish.ShowsInWinter() -> WinterJudge.hundredths(facts);
            case Wish.Fragrant() -> is(facts, Attributes.FRAGRANCE, Fragrance.STRONG);
            case Wish.OfForm(var forms) -> clearly(forms, facts);
            case Wish.Feeds(var wildlife) ->
                feeds(wildlife, facts.value(Attributes.WILDLIFE).orElse(Set.of()));
            case Wish.ServesAs(var use) ->
                serves(use, facts.value(Attributes.USES).orElse(Set.of()));
            case Wish.Shows shows -> Showing.hundredths(shows, facts);
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
        return (int) Math.max(0, BEST - Math.round(BEST / 2.0 * Math.abs(middle - wanted.ordinal())));
    }

    /// A plant at the cold end of its range may fail in a bad winter, one at the warm end wears out in every summer; a
    /// zone within it neither does.
    private static int surely(HardinessZone zone, Facts facts) {
        return facts.value(Attributes.HARDINESS)
                .map(range -> Math.min(
                        sure(zone.half() - range.coldest().half(), COLD_END),
                        range.hasWarmLimit() ? sure(range.warmest().half() - zone.half(), 0) : SURE))
                .orElse(0);
    }

    /// @param margin how far within the range, in half zones; below 0 outside
    /// @param atEnd what the very end counts
    private static int sure(int margin, int atEnd) {
        return margin < 0 ? 0 : Math.min(SURE, atEnd + margin * (SURE - atEnd) / SURE_HALF_ZONES);
    }

    /// Shrubs that may grow into trees come after plain shrubs where shrubs are asked for, and the other way; so does
    /// what creeps.
    private static int clearly(Set<LifeForm> forms, Facts facts) {
        Set<LifeForm> known = facts.value(Attributes.LIFE_FORM).orElse(Set.of());
        boolean otherToo = Stream.of(LifeForm.TREE, LifeForm.SHRUB)
                .anyMatch(form -> known.contains(form) && !forms.contains(form));
        boolean creeps = known.contains(LifeForm.GROUNDCOVER)
                && forms.contains(LifeForm.SHRUB)
                && !forms.contains(LifeForm.GROUNDCOVER);
        return otherToo || creeps ? EITHER : BEST;
    }

    /// What makes a screen and a hedge is dense to the ground; a groundcover that holds slopes roots well; a
    /// shade tree that stands streets bears most places.
    private static int serves(Use use, Set<Use> known) {
        return switch (use) {
            case SCREEN -> known.contains(Use.HEDGE) ? BEST : 0;
            case HEDGE -> known.contains(Use.SCREEN) ? BEST : 0;
            case GROUNDCOVER -> known.contains(Use.SLOPE) ? BEST : 0;
            case SHADE_TREE -> known.contains(Use.STREET) ? BEST : 0;
            default -> 0;
        };
    }

    /// Nectar goes well with pollen and food for caterpillars, food for birds with cover and nesting places.
    private static int feeds(Wildlife wildlife, Set<Wildlife> known) {
        Set<Wildlife> with = switch (wildlife) {
            case NECTAR, POLLEN, LARVAL_HOST -> Set.of(Wildlife.NECTAR, Wildlife.POLLEN, Wildlife.LARVAL_HOST);
            case BIRD_FOOD, COVER, NESTING -> Set.of(Wildlife.BIRD_FOOD, Wildlife.COVER, Wildlife.NESTING);
        };
        long also = known.stream().filter(with::contains).count() - 1;
        return (int) (also * BEST / 2);
    }

    /// A high tolerance, and for drought and wet feet a liking as well.
    private static int bears(Wish.Stress stress, Facts facts) {
        return switch (stress) {
            case DROUGHT -> bears(facts, Attributes.DROUGHT_TOLERANCE) + likes(facts, Moisture.DRY);
            case WET_FEET -> bears(facts, Attributes.WET_TOLERANCE) + likes(facts, Moisture.WET);
            case SALT_IN_SOIL -> bears(facts, Attributes.SALT_SOIL) + LIKING;
            case SALT_SPRAY -> bears(facts, Attributes.SALT_SPRAY) + LIKING;
            case COMPACTION -> bears(facts, Attributes.COMPACTION) + LIKING;
            case JUGLONE -> BEST;
        };
    }

    private static int bears(Facts facts, Attribute<Tolerance> attribute) {
        return is(facts, attribute, Tolerance.HIGH) == BEST ? BEST - LIKING : 0;
    }

    private static int likes(Facts facts, Moisture moisture) {
        return facts.value(Attributes.MOISTURE)
                        .filter(liked -> liked.contains(moisture))
                        .isPresent()
                ? LIKING
                : 0;
    }

    private static <T> int is(Facts facts, Attribute<T> attribute, T best) {
        return facts.value(attribute).filter(best::equals).isPresent() ? BEST : 0;
    }
}
