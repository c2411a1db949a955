package org.benchleaf.search.need;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.shared.color.ColorFamily;
import org.benchleaf.shared.fact.Region;
import org.benchleaf.shared.measure.HardinessZone;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Creature;
import org.benchleaf.shared.plant.Foliage;
import org.benchleaf.shared.plant.Habit;
import org.benchleaf.shared.plant.LifeForm;
import org.benchleaf.shared.plant.Season;
import org.benchleaf.shared.plant.Use;
import org.benchleaf.shared.plant.Wildlife;
import org.benchleaf.shared.site.Exposure;
import org.benchleaf.shared.site.Moisture;
import org.benchleaf.shared.site.SoilTexture;
import org.benchleaf.shared.stock.StockSize;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NeedReaderTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final YearWeek MID_APRIL = new YearWeek(2027, 15);

    private final NeedReader reader = new NeedReader(EnglishWords.read());

    private NeedReading read(String sentence) {
        return reader.read(sentence, TODAY);
    }

    private List<Wish> wishes(String sentence) {
        NeedReading reading = read(sentence);
        assertThat(reading.notUnderstood()).as(sentence).isEmpty();
        return reading.need().wishes().stream().map(WeighedWish::wish).toList();
    }

    private static Wish stock(int count, String size, Optional<YearWeek> by) {
        return new Wish.InStock(count, StockSize.read(size).toOptional(), by);
    }

    private static Wish shows(Season season, String months, ColorFamily... color) {
        return new Wish.Shows(
                season,
                MonthSet.read(months).toOptional(),
                List.of(color).stream().findFirst());
    }

    @Test
    void aPlaceBesideNativeMayBeWhereItIsNative() {
        NeedReading read = read("native shrubs in Ohio");
        assertThat(read.others())
                .containsExactly(new OtherReading(
                        "in Ohio", List.of(new Wish.NativeTo(Region.read("OH").toOptional()))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"no shade", "not for wet soil", "instead of hedges", "not in full sun"})
    void whatIsNotWantedIsNeverReadAsWanted(String words) {
        NeedReading read = read(words);
        assertThat(read.need().wishes()).isEmpty();
        assertThat(read.notUnderstood()).containsExactly(words);
    }

    @ParameterizedTest
    @CsvSource({
        "something like boxwood, like-name",
        "perennials to go with hydrangeas, beside-name",
        "shrubs under mature oaks, under-is-dry-shade"
    })
    void aPlantThatIsOnlySpokenOfIsNotLookedFor(String words, String note) {
        NeedReading read = read(words);
        assertThat(read.need().wishes()).noneMatch(wish -> wish.wish() instanceof Wish.OfGenus);
        assertThat(read.notUnderstood()).isEmpty();
        assertThat(read.notes()).anyMatch(told -> told.key().equals(note));
    }

    @Test
    void readsTheLandscapersSentence() {
        NeedReading reading =
                read("Fall color, zone 6, shade, under 5 ft, native if possible, 40 in #3, for the week of 12 April.");

        assertThat(reading.need().wishes())
                .containsExactly(
                        WeighedWish.of(shows(Season.FALL_COLOR, "")),
                        WeighedWish.of(new Wish.HardyIn(HardinessZone.of(6, 'a'))),
                        WeighedWish.of(new Wish.GrowsIn(Exposure.PART_SHADE)),
                        WeighedWish.of(new Wish.NoTallerThan(152)),
                        new WeighedWish(new Wish.NativeTo(Optional.empty()), 0.5, false),
                        WeighedWish.of(stock(40, "#3", Optional.of(MID_APRIL))));
        assertThat(reading.understood().stream().map(Understood::words))
                .containsExactly(
                        "Fall color",
                        "zone 6",
                        "shade",
                        "under 5 ft",
                        "native if possible",
                        "40 in #3",
                        "for the week of 12 April");
        assertThat(reading.notUnderstood()).isEmpty();
        assertThat(reading.notes())
                .containsExactly(
                        new Note("zone-colder-half", "zone 6", "6a"),
                        new Note("shade-is-part", "shade", ""),
                        new Note("height-when-grown", "under 5 ft", "152 cm"),
                        new Note("week", "for the week of 12 April", "2027-W15"));
    }

    @Test
    void readsTheSentenceOfAScreen() {
        assertThat(wishes("40 evergreen screening shrubs 6-8 ft for zone 5b, deer resistant, no boxwood, "
                        + "ready by mid April, under $35"))
                .containsExactly(
                        stock(40, "", Optional.of(MID_APRIL)),
                        new Wish.OfFoliage(Set.of(Foliage.EVERGREEN)),
                        new Wish.ServesAs(Use.SCREEN),
                        new Wish.OfForm(Set.of(LifeForm.SHRUB)),
                        new Wish.AtLeastTall(183),
                        new Wish.NoTallerThan(244),
                        new Wish.HardyIn(HardinessZone.of(5, 'b')),
                        new Wish.LeftAloneBy(Wish.Browser.DEER),
                        new Wish.NotOfGenus("Buxus"),
                        new Wish.AtMostPrice(Money.usDollars("35")));
    }

    @Test
    void readsSitesAsGrowersSayThem() {
        assertThat(wishes("full sun, dry, salt tolerant groundcover"))
                .containsExactly(
                        new Wish.GrowsIn(Exposure.FULL_SUN),
                        new Wish.LikesSoil(Moisture.DRY),
                        new Wish.Bears(Wish.Stress.SALT_IN_SOIL),
                        new Wish.ServesAs(Use.GROUNDCOVER));
        assertThat(wishes("dappled shade")).containsExactly(new Wish.GrowsIn(Exposure.PART_SHADE));
        assertThat(wishes("north side")).containsExactly(new Wish.GrowsIn(Exposure.FULL_SHADE));
        assertThat(wishes("wet feet")).containsExactly(new Wish.Bears(Wish.Stress.WET_FEET));
        assertThat(wishes("clay")).containsExactly(new Wish.LikesTexture(SoilTexture.CLAY));
        assertThat(wishes("rain garden")).containsExactly(new Wish.ServesAs(Use.RAIN_GARDEN));
        assertThat(wishes("hedge")).containsExactly(new Wish.ServesAs(Use.HEDGE));
        assertThat(wishes("pollinator")).containsExactly(new Wish.Feeds(Wildlife.NECTAR));
        assertThat(wishes("columnar")).containsExactly(new Wish.OfHabit(Habit.COLUMNAR));
        assertThat(wishes("fragrant")).containsExactly(new Wish.Fragrant());
    }

    @Test
    void readsWhatIsLookedAtWithColorAndMonths() {
        assertThat(wishes("red stems in winter")).containsExactly(shows(Season.STEM, "Dec-Feb", ColorFamily.RED));
        assertThat(wishes("white flowers in June")).containsExactly(shows(Season.FLOWER, "Jun", ColorFamily.WHITE));
        assertThat(wishes("summer blooms")).containsExactly(shows(Season.FLOWER, "Jun-Aug"));
        assertThat(wishes("deep red fall color")).containsExactly(shows(Season.FALL_COLOR, "", ColorFamily.RED));
        assertThat(wishes("yellow foliage")).containsExactly(shows(Season.FOLIAGE, "", ColorFamily.YELLOW));
        assertThat(wishes("flowers June-August")).containsExactly(shows(Season.FLOWER, "Jun-Aug"));
        assertThat(wishes("berries through winter")).hasSize(1);
        assertThat(read("red or pink flowers").need().wishes())
                .containsExactly(
                        new WeighedWish(shows(Season.FLOWER, "", ColorFamily.RED), 0.5, false),
                        new WeighedWish(shows(Season.FLOWER, "", ColorFamily.PINK), 0.5, false));
    }

    @Test
    void leavesAColorToTheNameItBeginsAndOthersToFlowersWithANote() {
        NeedReading maple = read("red maple");
        assertThat(maple.need().wishes()).containsExactly(WeighedWish.of(new Wish.OfGenus("Acer")));
        assertThat(maple.notUnderstood()).containsExactly("red");
        assertThat(read("white, zone 5a").notes()).containsExactly(new Note("color-of-flowers", "white", "white"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        zone 6            | 6a
        Zone 5b           | 5b
        USDA zone 10b     | 10b
        hardy to zone 4   | 4a
        z7                | 7a
        6b                | 6b
        """)
    void readsAWholeZoneAsItsColderHalf(String words, String zone) {
        assertThat(wishes(words))
                .containsExactly(new Wish.HardyIn(HardinessZone.read(zone).orThrow()));
    }

    // 1 ft = 30.48 cm: NIST SP 811 (2008), app. B.8
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        under 5 ft         | 0   | 152 | 0
        at least 10 ft     | 305 | 0   | 0
        6-8 ft             | 183 | 244 | 0
        6 to 8 feet tall   | 183 | 244 | 0
        up to 6 ft wide    | 0   | 0   | 183
        2-3 ft wide        | 0   | 0   | 91
        4 ft or less       | 0   | 122 | 0
        under 36 in. tall  | 0   | 91  | 0
        no taller than 1.5 m | 0 | 150 | 0
        5' tall            | 122 | 182 | 0
        4' 6" max          | 0   | 137 | 0
        """)
    void readsHeightsAndSpreads(String words, int atLeast, int atMost, int wide) {
        List<Wish> expected = new java.util.ArrayList<>();
        if (atLeast > 0) {
            expected.add(new Wish.AtLeastTall(atLeast));
        }
        if (atMost > 0) {
            expected.add(new Wish.NoTallerThan(atMost));
        }
        if (wide > 0) {
            expected.add(new Wish.NoWiderThan(wide));
        }
        assertThat(wishes(words)).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        40 in #3               | 40 | #3
        #5                     | 1  | #5
        25 of #1               | 25 | #1
        10 #7s                 | 10 | #7
        12 no. 3               | 12 | #3
        3 gal                  | 1  | #3
        20 in 5 gallon pots    | 20 | #5
        30 in 19 cm pots       | 30 | 19 cm
        8 2.5" caliper B&B     | 8  | 2.5 in cal B&B
        6 in 5-6 ft B&B        | 6  | 5-6 ft B&B
        qty 40                 | 40 |
        I need 15 plants       | 15 |
        """)
    void readsCountsAndSizes(String words, int count, String size) {
        assertThat(wishes(words)).containsExactly(stock(count, size == null ? "" : size, Optional.empty()));
    }

    // the classes of ANSI Z60.1: a #3 holds 628 to 742 cubic inches, three gallons 693, but a class is no measure
    @Test
    void saysThatAClassIsNotAGallon() {
        assertThat(read("3 gal").notes()).containsExactly(new Note("size-class-not-gallon", "3 gal", "#3"));
        assertThat(read("4 gal").need().wishes()).doesNotContain(WeighedWish.of(stock(1, "#3", Optional.empty())));
    }

    // ISO 8601 weeks of 2027: 12 April is the Monday of week 15
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        for the week of 12 April | 2027-W15
        week of April 12th       | 2027-W15
        by mid April             | 2027-W15
        ready by April 15, 2027  | 2027-W15
        by 2027-04-12            | 2027-W15
        week 15                  | 2027-W15
        2027-W15                 | 2027-W15
        by 4/12                  | 2027-W15
        by April                 | 2027-W13
        by end of June           | 2027-W26
        by 20 November           | 2026-W47
        by 10 November           | 2027-W45
        next week                | 2026-W49
        """)
    void readsWeeksFromToday(String words, String week) {
        assertThat(wishes(words))
                .containsExactly(stock(1, "", YearWeek.read(week).toOptional()));
    }

    @Test
    void readsNativesOfAStateByNameAndByPostalCode() {
        Wish ofPennsylvania = new Wish.NativeTo(Optional.of(new Region("US-PA")));
        assertThat(wishes("native to Pennsylvania")).containsExactly(ofPennsylvania);
        assertThat(wishes("a PA native")).containsExactly(ofPennsylvania);
        assertThat(wishes("native in West Virginia"))
                .containsExactly(new Wish.NativeTo(Optional.of(new Region("US-WV"))));
        assertThat(wishes("native")).containsExactly(new Wish.NativeTo(Optional.empty()));
    }

    @Test
    void readsWhomItMustNotHurt() {
        assertThat(wishes("safe for dogs")).containsExactly(new Wish.SafeFor(Creature.DOGS));
        assertThat(wishes("non-toxic to horses and cats"))
                .containsExactly(new Wish.SafeFor(Creature.HORSES), new Wish.SafeFor(Creature.CATS));
        assertThat(wishes("pet friendly"))
                .containsExactly(new Wish.SafeFor(Creature.DOGS), new Wish.SafeFor(Creature.CATS));
        assertThat(read("safe for dogs").need().wishes().getFirst().fixed()).isTrue();
    }

    @Test
    void readsGeneraByEnglishAndByLatinName() {
        assertThat(wishes("no boxwood or holly"))
                .containsExactly(new Wish.NotOfGenus("Buxus"), new Wish.NotOfGenus("Ilex"));
        NeedReader latin = new NeedReader(EnglishWords.read().withGenera(Set.of("Leucothoe")));
        assertThat(latin.read("leucothoe", TODAY).need().wishes())
                .containsExactly(WeighedWish.of(new Wish.OfGenus("Leucothoe")));
    }

    @Test
    void letsWordsWeighWishesBesideThem() {
        assertThat(read("preferably fragrant, must be evergreen").need().wishes())
                .containsExactly(
                        new WeighedWish(new Wish.Fragrant(), 0.5, false),
                        new WeighedWish(new Wish.OfFoliage(Set.of(Foliage.EVERGREEN)), 1, true));
    }

    @Test
    void listsEveryWordItDoesNotUnderstandAndKeepsNeighboursTogether() {
        NeedReading reading = read("something like little lime for a wedding, zone 6b");
        assertThat(reading.notUnderstood()).containsExactly("little lime", "wedding");
        assertThat(reading.need().wishes()).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   ", "?!", "#", "$", "under", "zone", "by", "no", "40 in", "((", "in in in"})
    void neverFailsOnFragments(String sentence) {
        assertThat(read(sentence).need()).isNotNull();
    }

    @Test
    void accountsForEveryWordOfASentence() {
        String sentence = "Hi, 40 frobnicated shrubs with white flowers in June, zone 6, by mid April please";
        NeedReading reading = read(sentence);
        String shown = String.join(
                        " ",
                        reading.understood().stream().map(Understood::words).toList()) + " "
                + String.join(" ", reading.notUnderstood());
        Set<String> stopWords = Set.of("Hi", "with", "please");
        for (String word : sentence.split("[ ,]+")) {
            assertThat(shown.contains(word) || stopWords.contains(word))
                    .as(word)
                    .isTrue();
        }
    }

    // steps of height in which field-grown plants are sold: ANSI Z60.1, from memory
    @ParameterizedTest
    @CsvSource(textBlock = """
        6 foot arborvitae,          6-7 ft B&B
        8 ft arborvitae,            8-10 ft B&B
        arborvitae 5-6 ft,          5-6 ft B&B
        """)
    void offersTheSizeThatAHeightMayBeSoldIn(String sentence, String size) {
        assertThat(read(sentence).others())
                .extracting(OtherReading::wishes)
                .contains(List.of(new Wish.InStock(1, StockSize.read(size).toOptional(), Optional.empty())));
    }

    @ParameterizedTest
    @ValueSource(strings = {"6 ft tall", "under 6 ft", "6 ft high or less", "6 inches", "20 ft"})
    void offersNoSizeForAHeightThatIsSaidToBeOne(String sentence) {
        assertThat(read(sentence).others()).isEmpty();
    }
}
