package org.benchleaf.search.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.benchleaf.search.Plants.NOW;
import static org.benchleaf.search.Plants.facts;
import static org.benchleaf.search.Plants.name;
import static org.benchleaf.search.Plants.stock;

import java.time.Month;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.search.Plants;
import org.benchleaf.search.RandomNeeds;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.color.ColorFamily;
import org.benchleaf.shared.fact.Region;
import org.benchleaf.shared.measure.HardinessZone;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.Need;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.need.Reason.Shortfall;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Creature;
import org.benchleaf.shared.plant.Foliage;
import org.benchleaf.shared.plant.LifeForm;
import org.benchleaf.shared.plant.Season;
import org.benchleaf.shared.plant.Use;
import org.benchleaf.shared.plant.Wildlife;
import org.benchleaf.shared.site.Exposure;
import org.benchleaf.shared.site.Moisture;
import org.benchleaf.shared.stock.StockSize;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FitJudgeTest {
    private static final PlantStock NONE = PlantStock.none(PlantKey.ofSerial(1));

    private final FitJudge judge = new FitJudge();

    private Reason judge(Wish wish, String... facts) {
        return judge.judge(wish, facts(facts), name("Itea", "virginica"), NONE, Occasion.of(Need.of(wish), NOW));
    }

    private Reason judge(Wish wish, PlantStock stock, Wish... others) {
        Need need = Need.of(others.length == 0 ? new Wish[] {wish} : others);
        return judge.judge(wish, Facts.NONE, name("Itea", "virginica"), stock, Occasion.of(need, NOW));
    }

    private static String outcome(Reason reason) {
        return switch (reason) {
            case Reason.Met met -> "met";
            case Reason.Unknown unknown -> "unknown";
            case Reason.Missed missed -> missed.by().toString();
        };
    }

    @Test
    void saysWhatItSawWhoStatesItAndThatItIsTheTaxons() {
        Wish wish = new Wish.NoTallerThan(200);
        Facts inherited = Facts.NONE.inheriting(facts("height", "90-150 cm"));

        Reason reason = judge.judge(wish, inherited, name("Itea", "virginica"), NONE, Occasion.of(Need.of(), NOW));

        assertThat(reason)
                .isEqualTo(new Reason.Met(wish, new Reason.Seen("90-150 cm", Optional.of(Plants.LIST), true)));
    }

    @Test
    void countsAMissingFactAsUnknownWhateverIsAskedOfAPlant() {
        RandomNeeds needs = new RandomNeeds(5);
        for (int i = 0; i < 2000; i++) {
            Wish wish = needs.wish();
            Reason reason = judge(wish);
            // stock and name are never missing: no stock is none, every plant has a genus, a wild species is free
            boolean always = wish instanceof Wish.InStock
                    || wish instanceof Wish.FreeOf
                    || wish instanceof Wish.OfGenus
                    || wish instanceof Wish.NotOfGenus
                    || wish instanceof Wish.OfSpecies
                    || wish instanceof Wish.NotOfSpecies
                    || wish instanceof Wish.NamedInstead;
            assertThat(reason instanceof Reason.Unknown).as("%s", wish).isEqualTo(!always);
        }
    }

    // half zones: USDA Plant Hardiness Zone Map 2023
    @ParameterizedTest
    @CsvSource(textBlock = """
        5-9,   6a, met
        6-9,   6a, met
        6b-9,  6a, HalfZones[halves=-1]
        7-9,   6a, HalfZones[halves=-2]
        3-5,   6a, HalfZones[halves=1]
        4-8,   8b, met
        3b+,   6a, met
        3b+,   9a, unknown
        7+,    6a, HalfZones[halves=-2]
        """)
    void judgesHardinessByHalfZones(String range, String site, String expected) {
        Wish wish = new Wish.HardyIn(HardinessZone.read(site).orThrow());
        assertThat(outcome(judge(wish, "hardiness", range))).isEqualTo(expected);
    }

    // 5 ft is 152 cm; a span up to 5 % over is still about 5 ft
    @ParameterizedTest
    @CsvSource(textBlock = """
        90-150 cm,  met
        90-158 cm,  met
        90-160 cm,  Centimetres[cm=8]
        183-244 cm, Centimetres[cm=92]
        """)
    void takesALittleOverTheHeightAskedForAsMet(String height, String expected) {
        assertThat(outcome(judge(new Wish.NoTallerThan(152), "height", height))).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
        183-244 cm, met
        150-240 cm, met
        120-200 cm, Centimetres[cm=-23]
        60-90 cm,   Centimetres[cm=-108]
        """)
    void asksTheMiddleOfTheSpanToReachAHeight(String height, String expected) {
        assertThat(outcome(judge(new Wish.AtLeastTall(183), "height", height))).isEqualTo(expected);
    }

    @Test
    void countsStepsOfLightAndMoistureToTheNearestOne() {
        Wish shade = new Wish.GrowsIn(Exposure.FULL_SHADE);
        assertThat(outcome(judge(shade, "exposure", "part shade; full shade"))).isEqualTo("met");
        assertThat(outcome(judge(shade, "exposure", "full sun; part shade"))).isEqualTo("Steps[steps=1]");
        assertThat(outcome(judge(new Wish.LikesSoil(Moisture.WET), "moisture", "dry")))
                .isEqualTo("Steps[steps=3]");
    }

    // Rutgers NJAES E271: A rarely, B seldom, C occasionally, D frequently severely damaged; hosta and American
    // arborvitae D, western arborvitae C, lilac B, American holly A
    @ParameterizedTest
    @CsvSource(textBlock = """
        rarely,       met
        seldom,       met
        occasionally, Steps[steps=1]
        frequently,   Steps[steps=2]
        """)
    void leavesPlantsDamagedAtMostSeldomToTheDeer(String rating, String expected) {
        assertThat(outcome(judge(new Wish.LeftAloneBy(Wish.Browser.DEER), "deer", rating)))
                .isEqualTo(expected);
    }

    @Test
    void findsDroughtBorneByPlantsOfDrySoilAndUnknownForOthersNobodyRated() {
        Wish drought = new Wish.Bears(Wish.Stress.DROUGHT);
        assertThat(outcome(judge(drought, "drought_tolerance", "medium"))).isEqualTo("met");
        assertThat(outcome(judge(drought, "drought_tolerance", "low", "moisture", "dry")))
                .isEqualTo("Steps[steps=1]");
        assertThat(outcome(judge(drought, "moisture", "dry; medium"))).isEqualTo("met");
        assertThat(outcome(judge(drought, "moisture", "moist"))).isEqualTo("unknown");
        assertThat(outcome(judge(new Wish.Bears(Wish.Stress.JUGLONE), "juglone", "sensitive")))
                .isEqualTo("NotSo[]");
    }

    @Test
    void judgesFormFoliageUseAndWildlifeByWhatIsListed() {
        assertThat(outcome(judge(new Wish.OfForm(Set.of(LifeForm.SHRUB)), "life_form", "shrub; conifer")))
                .isEqualTo("met");
        Wish evergreen = new Wish.OfFoliage(Set.of(Foliage.EVERGREEN));
        assertThat(outcome(judge(evergreen, "foliage", "semi-evergreen"))).isEqualTo("Steps[steps=1]");
        assertThat(outcome(judge(evergreen, "foliage", "deciduous"))).isEqualTo("NotSo[]");
        assertThat(outcome(judge(new Wish.ServesAs(Use.HEDGE), "uses", "screen")))
                .isEqualTo("NotSo[]");
        assertThat(outcome(judge(new Wish.Feeds(Wildlife.NECTAR), "wildlife", "bird food; nectar")))
                .isEqualTo("met");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        none                  |         | NotSo[]
        red #C8102E           |         | met
        red #C8102E           | Oct     | met
                              | Oct-Nov | unknown
        """)
    void asksForAFallColorThatIsStated(String color, String months, String expected) {
        Facts facts = color == null
                ? facts("fall_months", months)
                : months == null ? facts("fall_color", color) : facts("fall_color", color, "fall_months", months);
        Wish wish = new Wish.Shows(Season.FALL_COLOR, Optional.empty(), Optional.empty());
        assertThat(outcome(judge.judge(wish, facts, name("Itea", "virginica"), NONE, Occasion.of(Need.of(), NOW))))
                .isEqualTo(expected);
    }

    @Test
    void knowsThatAnEvergreenWithoutAStatedFallColorHasNone() {
        Wish fall = new Wish.Shows(Season.FALL_COLOR, Optional.empty(), Optional.empty());
        assertThat(outcome(judge(fall, "foliage", "evergreen"))).isEqualTo("NotSo[]");
        assertThat(outcome(judge(fall, "foliage", "deciduous"))).isEqualTo("unknown");
    }

    @Test
    void judgesFlowersByColorAndMonthsAndTellsTheLackOfEither() {
        Wish whiteInJune = new Wish.Shows(
                Season.FLOWER, Optional.of(MonthSet.between(Month.JUNE, Month.JUNE)), Optional.of(ColorFamily.WHITE));
        assertThat(outcome(judge(whiteInJune, "flower_color", "white", "bloom", "Jun-Jul")))
                .isEqualTo("met");
        assertThat(outcome(judge(whiteInJune, "flower_color", "white", "bloom", "Sep")))
                .isEqualTo("Months[months=3]");
        assertThat(outcome(judge(whiteInJune, "flower_color", "red", "bloom", "Jun")))
                .startsWith("OtherColor");
        assertThat(outcome(judge(whiteInJune, "flower_color", "white"))).isEqualTo("unknown");
        assertThat(outcome(judge(whiteInJune, "bloom", "Sep"))).isEqualTo("Months[months=3]");
        assertThat(outcome(judge(whiteInJune, "bloom", "Jun"))).isEqualTo("unknown");
    }

    @Test
    void takesAColorForAFamilyThatItLooksLike() {
        Wish purple = new Wish.Shows(Season.FLOWER, Optional.empty(), Optional.of(ColorFamily.PURPLE));
        // the swatch of purple under another word
        assertThat(outcome(judge(purple, "flower_color", "blue #7C5399"))).isEqualTo("met");
        assertThat(outcome(judge(purple, "flower_color", "yellow"))).startsWith("OtherColor");
    }

    @Test
    void countsOnlyFoliageThatIsNotPlainGreenAsAShow() {
        Wish foliage = new Wish.Shows(Season.FOLIAGE, Optional.empty(), Optional.empty());
        assertThat(outcome(judge(foliage, "foliage_color", "dark green #2F5D3A")))
                .isEqualTo("NotSo[]");
        assertThat(outcome(judge(foliage, "foliage_color", "green; white"))).isEqualTo("met");
        assertThat(outcome(judge(foliage, "foliage_color", "yellow-green #9ACD32")))
                .isEqualTo("met");
        assertThat(outcome(judge(foliage, "foliage_color", "green", "spring_foliage_color", "red")))
                .isEqualTo("met");
    }

    @Test
    void looksAtTheLeavesOfTheSeasonAskedFor() {
        Wish purpleInWinter = new Wish.Shows(
                Season.FOLIAGE,
                Optional.of(MonthSet.between(Month.DECEMBER, Month.FEBRUARY)),
                Optional.of(ColorFamily.PURPLE));
        String[] plum = {"foliage", "evergreen", "foliage_color", "green", "winter_foliage_color", "purple"};
        assertThat(outcome(judge(purpleInWinter, plum))).isEqualTo("met");
        assertThat(outcome(judge(purpleInWinter, "foliage", "deciduous", "foliage_color", "purple")))
                .isEqualTo("NotSo[]");
        assertThat(outcome(judge(purpleInWinter, "foliage_color", "purple"))).isEqualTo("unknown");
    }

    @Test
    void takesANoteOnBarkAsAShowOfStemsButNotForItsColorOrMonths() {
        Wish stems = new Wish.Shows(Season.STEM, Optional.empty(), Optional.empty());
        Wish red = new Wish.Shows(Season.STEM, Optional.empty(), Optional.of(ColorFamily.RED));
        assertThat(outcome(judge(stems, "stem_note", "peeling bark"))).isEqualTo("met");
        assertThat(outcome(judge(red, "stem_note", "peeling bark"))).isEqualTo("unknown");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        US-PA US-NY |                              | met     | met
        US-VA       |                              | NotSo[] | met
                    | Japan, Korea                 | NotSo[] | NotSo[]
                    | eastern North America        | unknown | met
                    | Europe and North America     | unknown | met
                    | garden hybrid                | unknown | unknown
                    | hybrid of American and Asian | unknown | unknown
        """)
    void letsStatesDecideWhatIsNativeAndARangeOnlyWhenItLiesElsewhere(
            String states, String range, String inPennsylvania, String anywhere) {
        String[] facts = {states == null ? "native_range" : "native_states", states == null ? range : states};
        assertThat(outcome(judge(new Wish.NativeTo(Optional.of(new Region("US-PA"))), facts)))
                .isEqualTo(inPennsylvania);
        assertThat(outcome(judge(new Wish.NativeTo(Optional.empty()), facts))).isEqualTo(anywhere);
    }

    // yew and horses: ASPCA Animal Poison Control list, 2024 (yews are listed as toxic to dogs, cats and horses)
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        toxic: dogs, cats, horses - all parts | DOGS     | NotSo[]
        toxic: horses                         | DOGS     | unknown
        toxic: people                         | CHILDREN | NotSo[]
        thorns: children                      | PEOPLE   | NotSo[]
        pollen: people                        | PEOPLE   | unknown
        spreads: gardens                      | GARDENS  | NotSo[]
        toxic: livestock                      | HORSES   | NotSo[]
        none known                            | DOGS     | unknown
        """)
    void neverCallsAPlantSafe(String cautions, Creature creature, String expected) {
        assertThat(outcome(judge(new Wish.SafeFor(creature), "cautions", cautions)))
                .isEqualTo(expected);
    }

    @Test
    void wantsEnoughOfOneItemByTheWeekAndSaysWhatThereIs() {
        Wish forty = new Wish.InStock(40, StockSize.read("#3").toOptional(), Optional.empty());
        Wish fortyInApril =
                new Wish.InStock(40, StockSize.read("#3").toOptional(), Optional.of(new YearWeek(2027, 15)));
        PlantStock stock = stock(1, "#3, 12", "#5, 60", "#3, 90, 2027-W14");

        assertThat(judge(forty, stock))
                .isEqualTo(new Reason.Missed(
                        forty, Reason.Seen.own("12 × #3; 90 × #3 (2027-W14); 60 × #5"), new Shortfall.TooFew(28)));
        assertThat(outcome(judge(fortyInApril, stock))).isEqualTo("met");
        assertThat(outcome(judge(new Wish.InStock(40, Optional.empty(), Optional.empty()), stock)))
                .isEqualTo("met");
        assertThat(outcome(judge(new Wish.InStock(70, Optional.empty(), Optional.empty()), stock)))
                .isEqualTo("TooFew[missing=10]");
        assertThat(judge(forty, NONE))
                .isEqualTo(new Reason.Missed(forty, Reason.Seen.own("0"), new Shortfall.TooFew(40)));
    }

    @Test
    void judgesThePriceOfWhatCanBeDelivered() {
        Wish cheap = new Wish.AtMostPrice(Money.usDollars("20"));
        Wish forty = new Wish.InStock(40, Optional.empty(), Optional.empty());
        Wish inThrees = new Wish.InStock(1, StockSize.read("#3").toOptional(), Optional.empty());
        PlantStock stock = stock(1, "#1, 0, , 6.50", "#3, 15, , 19.00", "#5, 60, , 32.50");

        assertThat(outcome(judge(cheap, stock))).isEqualTo("met");
        assertThat(outcome(judge(cheap, stock, cheap, forty))).isEqualTo("TooDear[minor=1250]");
        assertThat(outcome(judge(cheap, stock, cheap, inThrees))).isEqualTo("met");
        assertThat(outcome(judge(cheap, stock(1, "#3, 15")))).isEqualTo("unknown");
    }

    @Test
    void ranksWishesMetBeforeNearnessBeforeStandingBeforeName() {
        Need need = new Need(java.util.List.of(
                WeighedWish.of(new Wish.NoTallerThan(100)), new WeighedWish(new Wish.Fragrant(), 0.5, false)));
        Fit meets = fit(need, 1, NONE, "height", "50-90 cm", "fragrance", "none");
        Fit unknown = fit(need, 2, NONE, "fragrance", "strong");
        Fit nearer = fit(need, 3, NONE, "fragrance", "strong", "height", "90-120 cm");
        Fit farther = fit(need, 4, stock(4, "#3, 5"), "fragrance", "strong", "height", "900-1200 cm");
        Fit same = fit(need, 5, stock(5, "#3, 5"), "height", "50-90 cm", "fragrance", "none");

        assertThat(java.util.stream.Stream.of(farther, unknown, meets, nearer, same)
                        .sorted())
                .containsExactly(same, meets, nearer, unknown, farther);
    }

    @Test
    void excludesAPlantKnownToMissAFixedWishButNotOneOfWhichItIsUnknown() {
        Need need = Need.of(new Wish.HardyIn(HardinessZone.of(6, 'a')));
        assertThat(fit(need, 1, NONE, "hardiness", "7-9").answers()).isFalse();
        assertThat(fit(need, 2, NONE).answers()).isTrue();
    }

    private Fit fit(Need need, long serial, PlantStock stock, String... facts) {
        return judge.fit(need, Plants.plant(serial, name("Itea", "virginica"), facts(facts)), stock, NOW);
    }

    @Test
    void saysThatAPlantIsKnownForWhatItMeets() {
        Wish wet = new Wish.Bears(Wish.Stress.WET_FEET);
        Need need = new Need(List.of(WeighedWish.of(wet)));
        PlantRecord known = Plants.plant(
                1,
                Plants.name("Ilex", "verticillata"),
                Plants.facts("wet_tolerance", "high", "known_for", "wet ground"));
        PlantRecord other = Plants.plant(
                2, Plants.name("Ilex", "opaca"), Plants.facts("wet_tolerance", "high", "known_for", "fruit"));
        assertThat(fit(need, known).reasons()).allMatch(reason -> ((Reason.Met) reason).knownFor());
        assertThat(fit(need, other).reasons()).noneMatch(reason -> ((Reason.Met) reason).knownFor());
    }

    private static Fit fit(Need need, PlantRecord plant) {
        return new FitJudge().fit(need, plant, PlantStock.none(plant.key()), new YearWeek(2026, 48));
    }
}
