package org.benchleaf.search.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.search.Lists;
import org.benchleaf.search.Plants;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.measure.HardinessZone;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.need.Counting;
import org.benchleaf.shared.need.Need;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.LifeForm;
import org.benchleaf.shared.plant.Season;
import org.benchleaf.shared.plant.Use;
import org.benchleaf.shared.site.Exposure;
import org.junit.jupiter.api.Test;

/// The order is what is promised, not the numbers.
class HowWellTest {
    private static final Wish STEMS_IN_WINTER = new Wish.Shows(
            Season.STEM,
            Optional.of(org.benchleaf.shared.measure.MonthSet.read("Dec-Feb").orThrow()),
            Optional.empty());

    @Test
    void putsPlantsOfTheWoodsBeforePlantsOfTheSunInPartShade() {
        Wish shade = new Wish.GrowsIn(Exposure.PART_SHADE);
        assertThat(how(shade, fact(Attributes.EXPOSURE, "part sun; part shade; full shade")))
                .isGreaterThan(how(shade, fact(Attributes.EXPOSURE, "part shade; full shade")));
        assertThat(how(shade, fact(Attributes.EXPOSURE, "part shade; full shade")))
                .isGreaterThan(how(shade, fact(Attributes.EXPOSURE, "full sun; part sun; part shade")));
    }

    @Test
    void putsRedTwigsBeforeGrayBark() {
        assertThat(how(
                        STEMS_IN_WINTER,
                        fact(Attributes.STEM_COLOR, "red #9E2B2B"),
                        fact(Attributes.STEM_MONTHS, "Nov-Mar")))
                .isGreaterThan(how(
                        STEMS_IN_WINTER,
                        fact(Attributes.STEM_COLOR, "gray #8E8B84"),
                        fact(Attributes.STEM_MONTHS, "Jan-Dec")));
    }

    @Test
    void putsFruitThatLastsTheWinterBeforeFruitThatEndsInDecember() {
        Wish fruit = new Wish.Shows(
                Season.FRUIT,
                Optional.of(
                        org.benchleaf.shared.measure.MonthSet.read("Dec-Feb").orThrow()),
                Optional.empty());
        Fact<?> red = fact(Attributes.FRUIT_COLOR, "red #B3231F");
        assertThat(how(fruit, red, fact(Attributes.FRUIT, "Sep-Feb")))
                .isGreaterThan(how(fruit, red, fact(Attributes.FRUIT, "Sep-Dec")));
    }

    @Test
    void putsFallColorOfShrubsBeforeThatOfWhatDiesToTheGroundAndRedBeforeYellow() {
        Wish fall = new Wish.Shows(Season.FALL_COLOR, Optional.empty(), Optional.empty());
        Fact<?> red = fact(Attributes.FALL_COLOR, "red #B3231F");
        Fact<?> yellow = fact(Attributes.FALL_COLOR, "yellow #E3B93C");
        Fact<?> shrub = fact(Attributes.FOLIAGE, "deciduous");
        Fact<?> herb = fact(Attributes.FOLIAGE, "herbaceous");
        assertThat(how(fall, red, shrub)).isGreaterThan(how(fall, yellow, shrub));
        assertThat(how(fall, yellow, shrub)).isGreaterThan(how(fall, red, herb));
        assertThat(how(fall, yellow, herb)).isPositive();
    }

    @Test
    void whatMorePublishersNameInsteadOfAPlantServesBetter() {
        Wish wish = Lists.namedInstead("Berberis", Map.of("Itea virginica", 3, "Ilex", 1, "Ilex glabra", 2));

        assertThat(named(wish, Plants.name("Itea", "virginica")))
                .isGreaterThan(named(wish, Plants.name("Ilex", "glabra")));
        assertThat(named(wish, Plants.name("Ilex", "glabra"))).isGreaterThan(named(wish, Plants.name("Ilex", "opaca")));
        assertThat(named(wish, BotanicalName.ofGenus("Ilex"))).isEqualTo(named(wish, Plants.name("Ilex", "opaca")));
        assertThat(Outcome.isMet(named(wish, Plants.name("Ilex", "opaca")))).isTrue();
        assertThat(Outcome.isMissed(named(wish, Plants.name("Acer", "rubrum")))).isTrue();
    }

    private static int named(Wish wish, BotanicalName name) {
        return Outcome.of(
                new FitJudge()
                        .judge(
                                wish,
                                Facts.NONE,
                                name,
                                PlantStock.none(PlantKey.ofSerial(1)),
                                Occasion.of(Need.of(wish), Plants.NOW)),
                Facts.NONE);
    }

    @Test
    void putsPlainShrubsBeforeThoseThatGrowIntoTrees() {
        Wish shrub = new Wish.OfForm(Set.of(LifeForm.SHRUB));
        assertThat(how(shrub, fact(Attributes.LIFE_FORM, "shrub")))
                .isGreaterThan(how(shrub, fact(Attributes.LIFE_FORM, "shrub; tree")));
    }

    @Test
    void putsWhatIsKnownForItBeforeWhatOnlyBearsIt() {
        Wish wet = new Wish.Bears(Wish.Stress.WET_FEET);
        Fact<?> bears = fact(Attributes.WET_TOLERANCE, "high");
        int unsaid = how(wet, bears);
        assertThat(how(wet, bears, fact(Attributes.KNOWN_FOR, "wet ground; fruit")))
                .isGreaterThan(unsaid);
        assertThat(how(wet, bears, fact(Attributes.KNOWN_FOR, "fruit"))).isLessThan(unsaid);
        assertThat(how(wet, fact(Attributes.WET_TOLERANCE, "medium"), fact(Attributes.KNOWN_FOR, "wet ground")))
                .isGreaterThan(how(wet, bears, fact(Attributes.KNOWN_FOR, "fruit")) - 1);
    }

    @Test
    void putsTheShadeTreeEverybodyNamesBeforeOneThatStandsStreetsAsWell() {
        Wish shade = new Wish.ServesAs(Use.SHADE_TREE);
        assertThat(how(shade, fact(Attributes.USES, "shade tree"), fact(Attributes.KNOWN_FOR, "shade tree")))
                .isGreaterThan(
                        how(shade, fact(Attributes.USES, "shade tree; street"), fact(Attributes.KNOWN_FOR, "street")));
        Wish screen = new Wish.ServesAs(Use.SCREEN);
        assertThat(how(screen, fact(Attributes.USES, "hedge; screen"), fact(Attributes.KNOWN_FOR, "screen")))
                .isGreaterThan(how(screen, fact(Attributes.USES, "screen"), fact(Attributes.KNOWN_FOR, "screen")));
    }

    @Test
    void putsWhatIsSurelyHardyBeforeWhatIsAtTheEndOfItsRange() {
        Wish zone5a = new Wish.HardyIn(HardinessZone.of(5, 'a'));

        assertThat(how(zone5a, fact(Attributes.HARDINESS, "4-8")))
                .isEqualTo(how(zone5a, fact(Attributes.HARDINESS, "3-8")))
                .isGreaterThan(how(zone5a, fact(Attributes.HARDINESS, "4b-8")));
        // rated for the very zone: lived through most winters, named by advice; worn out by heat: seldom named
        assertThat(how(zone5a, fact(Attributes.HARDINESS, "4b-8")))
                .isGreaterThan(how(zone5a, fact(Attributes.HARDINESS, "5-8")));
        assertThat(how(zone5a, fact(Attributes.HARDINESS, "5-8")))
                .isGreaterThan(how(zone5a, fact(Attributes.HARDINESS, "2-5a")));
        assertThat(how(zone5a, fact(Attributes.HARDINESS, "2-5a"))).isZero();
    }

    @Test
    void putsPlainShrubsBeforeThoseThatCreep() {
        Wish shrub = new Wish.OfForm(Set.of(LifeForm.SHRUB));

        assertThat(how(shrub, fact(Attributes.LIFE_FORM, "shrub")))
                .isGreaterThan(how(shrub, fact(Attributes.LIFE_FORM, "shrub; groundcover")));
    }

    @Test
    void meritPraisesWhatManyGrow() {
        assertThat(merit(fact(Attributes.GROWN, "staple"))).isGreaterThan(merit());
        assertThat(merit()).isGreaterThan(merit(fact(Attributes.GROWN, "rare")));
    }

    @Test
    void meritAddsLessToNearnessThanOneWishThatIsMetWell() {
        assertThat(Merit.nearness(Merit.MOST)).isPositive().isLessThan(100);
    }

    @Test
    void neverCountsAsMuchAsAWish() {
        int best = Outcome.MET
                + HowWell.hundredths(
                        new Wish.GrowsIn(Exposure.FULL_SUN), Facts.of(List.of(fact(Attributes.EXPOSURE, "full sun"))));
        WeighedWish wish = WeighedWish.of(new Wish.GrowsIn(Exposure.FULL_SUN));
        assertThat(Outcome.near(best, wish)).isLessThanOrEqualTo(100);
        assertThat(Outcome.met(best, wish)).isEqualTo(1000);
    }

    @Test
    void byDegreeNeverMovesAPlantPastOneThatMeetsMoreOfWhatWasAsked() {
        WeighedWish taken = WeighedWish.of(new Wish.NoTallerThan(100)).counting(Counting.BY_DEGREE);
        for (int outcome = 0; outcome <= Outcome.MET + HowWell.BEST; outcome++) {
            assertThat(Outcome.met(outcome, taken)).isZero();
            assertThat(Outcome.near(outcome, taken)).isBetween(0, 100);
        }
    }

    @Test
    void byDegreeALittleTooTallIsALittleWorseAndTwiceTooTallIsMuchWorse() {
        WeighedWish low = WeighedWish.of(new Wish.NoTallerThan(100)).counting(Counting.BY_DEGREE);
        int met = Outcome.near(outcome(low.wish(), fact(Attributes.HEIGHT, "80-100 cm")), low);
        int little = Outcome.near(outcome(low.wish(), fact(Attributes.HEIGHT, "80-115 cm")), low);
        int twice = Outcome.near(outcome(low.wish(), fact(Attributes.HEIGHT, "150-200 cm")), low);

        assertThat(met - little).isBetween(1, met / 4);
        assertThat(met - twice).isGreaterThan(met / 2);
        assertThat(Outcome.near(Outcome.UNKNOWN, low)).isBetween(twice, little);
    }

    @Test
    void byDegreeWhatIsKnownForAUseCountsMoreThanWhatServes() {
        WeighedWish hedge = WeighedWish.of(new Wish.ServesAs(Use.HEDGE)).counting(Counting.BY_DEGREE);
        Fact<?> serves = fact(Attributes.USES, "hedge; border");

        assertThat(Outcome.near(outcome(hedge.wish(), serves, fact(Attributes.KNOWN_FOR, "hedge")), hedge))
                .isGreaterThan(
                        Outcome.near(outcome(hedge.wish(), serves, fact(Attributes.KNOWN_FOR, "flowers")), hedge))
                .isEqualTo(100);
    }

    private static int outcome(Wish wish, Fact<?>... facts) {
        Facts known = Facts.of(List.of(facts));
        Occasion occasion = Occasion.of(Need.of(wish), Plants.NOW);
        return Outcome.of(
                new FitJudge()
                        .judge(
                                wish,
                                known,
                                BotanicalName.ofGenus("Planta"),
                                PlantStock.none(PlantKey.ofSerial(1)),
                                occasion),
                known);
    }

    @Test
    void meritBlamesWhatSpreadsAndPraisesNatives() {
        Fact<?> spreads = fact(Attributes.CAUTIONS, "spreads: gardens - self-sows");
        Fact<?> home = fact(Attributes.NATIVE_STATES, "PA, NY");
        assertThat(merit(home)).isGreaterThan(merit());
        assertThat(merit()).isGreaterThan(merit(spreads));
        assertThat(merit(spreads)).isBetween(0, Merit.MOST);
    }

    private static int merit(Fact<?>... facts) {
        return Merit.of(Plants.plant(1, Plants.name("Itea", "virginica"), Facts.of(List.of(facts))));
    }

    private static int how(Wish wish, Fact<?>... facts) {
        return HowWell.hundredths(wish, Facts.of(List.of(facts)));
    }

    private static <T> Fact<T> fact(Attribute<T> attribute, String text) {
        return new Fact<>(attribute, attribute.codec().read(text).orThrow(), new Source("a test"), false);
    }
}
