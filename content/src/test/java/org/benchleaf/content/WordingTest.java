package org.benchleaf.content;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Month;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Term;
import org.benchleaf.shared.color.ColorFamily;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.measure.HardinessZone;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.measure.LengthStyle;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Caution;
import org.benchleaf.shared.plant.Creature;
import org.benchleaf.shared.plant.Season;
import org.benchleaf.shared.site.Exposure;
import org.benchleaf.shared.stock.Availability;
import org.benchleaf.shared.stock.ItemForm;
import org.benchleaf.shared.stock.StockSize;
import org.junit.jupiter.api.Test;

class WordingTest {
    private static final Source LIST = new Source("grower's list, 2026");
    private final Wording words = Wording.open(ContentPack.builtIn(), Locale.ENGLISH, LengthStyle.IMPERIAL);

    @Test
    void everyProblemOfTheValuesHasItsSentence() throws IOException {
        Set<String> keys = found("(?:refused|Problem\\.of|new Problem)\\(\\s*\"([^\"]+)\"");
        assertThat(keys).contains("zone.unknown", "size.gallon");
        assertThat(words.keys())
                .containsAll(keys.stream().map(key -> "problem." + key).toList());
    }

    @Test
    void saysOneOfOneAndManyOfMany() {
        Map<String, String> one = Map.of("items", "1", "plants", "1");
        Map<String, String> many = Map.of("items", "2", "plants", "0");
        assertThat(words.text("availability.count", one)).isEqualTo("1 size of 1 plant");
        assertThat(words.text("availability.count", many)).isEqualTo("2 sizes of 0 plants");
        Wording french = Wording.open(ContentPack.builtIn(), Locale.FRENCH, LengthStyle.METRIC);
        assertThat(french.text("availability.count", many)).isEqualTo("2 formats de 0 plante");
    }

    @Test
    void everyWordOfEveryVocabularyIsThere() throws Exception {
        Set<String> vocabularies = found("public enum (\\w+) implements Term");
        assertThat(vocabularies).contains("Exposure", "Habit", "Hazard");
        try (Stream<Path> files = sources()) {
            for (Path file : files.toList()) {
                String name = file.getFileName().toString().replace(".java", "");
                if (vocabularies.contains(name)) {
                    for (Object constant : typeOf(file).getEnumConstants()) {
                        assertThat(words.term((Enum<?>) constant)).isEqualTo(((Term) constant).term());
                    }
                }
            }
        }
    }

    @Test
    void everyKindOfWishAndReasonHasItsWords() {
        assertThat(words.keys()).containsAll(WishWords.keys());
    }

    private static Class<?> typeOf(Path file) throws ClassNotFoundException {
        String path = file.toString().replace('\\', '/');
        return Class.forName(path.substring(path.indexOf("org/benchleaf"), path.length() - ".java".length())
                .replace('/', '.'));
    }

    private static Set<String> found(String pattern) throws IOException {
        Set<String> found = new TreeSet<>();
        try (Stream<Path> files = sources()) {
            for (Path file : files.toList()) {
                Matcher matcher = Pattern.compile(pattern).matcher(Files.readString(file));
                while (matcher.find()) {
                    found.add(matcher.group(1));
                }
            }
        }
        return found;
    }

    private static Stream<Path> sources() throws IOException {
        return Files.walk(Path.of("../shared/src/main/java"))
                .filter(file -> file.toString().endsWith(".java"));
    }

    @Test
    void sentencesOfProblemsSayWhatWasReadAndWhatIsAccepted() {
        assertThat(words.problem(Problem.of("zone.unknown", "zone nine")))
                .isEqualTo("hardiness zone \"zone nine\" not understood; write zones 1 to 13 with a or b for a half,"
                        + " such as 4-8 or 5b-9a");
    }

    @Test
    void wishesAreWorded() {
        assertThat(words.wish(new Wish.HardyIn(HardinessZone.of(6, 'a')))).isEqualTo("hardy in zone 6a");
        assertThat(words.wish(new Wish.NoTallerThan(152))).isEqualTo("at most 5 ft tall");
        assertThat(words.wish(new Wish.InStock(
                        40,
                        StockSize.read("#3").toOptional(),
                        YearWeek.read("2027-04-12").toOptional())))
                .isEqualTo("40 in #3 by the week of 12 April 2027");
        assertThat(words.wish(new Wish.Shows(
                        Season.FLOWER,
                        Optional.of(MonthSet.between(Month.MAY, Month.JUNE)),
                        Optional.of(ColorFamily.WHITE))))
                .isEqualTo("white flower in May–Jun");
    }

    @Test
    void reasonsAreOneHonestLine() {
        Wish low = new Wish.NoTallerThan(152);
        Reason.Seen tall = new Reason.Seen("183-244 cm", Optional.of(LIST), false);
        assertThat(words.reason(new Reason.Missed(low, tall, new Reason.Shortfall.Centimetres(92))))
                .isEqualTo("grows to 6–8 ft, 3 ft over");
        assertThat(words.reason(new Reason.Unknown(low))).isEqualTo("height not known");
        assertThat(words.sourceOf(new Reason.Missed(low, tall, new Reason.Shortfall.NotSo())))
                .contains(LIST);
        assertThat(words.reason(new Reason.Missed(
                        new Wish.HardyIn(HardinessZone.of(4, 'a')),
                        new Reason.Seen("5b-9a", Optional.of(LIST), true),
                        new Reason.Shortfall.HalfZones(-3))))
                .isEqualTo("hardy in zones 5b–9a, the site is 3 half zones too cold (as its species)");
        assertThat(words.reason(new Reason.Met(new Wish.SafeFor(Creature.DOGS), Reason.Seen.own("none known"))))
                .isEqualTo("no caution known for dogs; not on a list does not mean safe");
    }

    @Test
    void stockMoneyAndMonthsAreWorded() {
        assertThat(words.availability(new Availability.InStock(1200))).isEqualTo("1,200 now");
        assertThat(words.availability(new Availability.From(new YearWeek(2027, 14), 60)))
                .isEqualTo("60 from the week of 5 April 2027");
        assertThat(words.availability(new Availability.SoldOut())).isEqualTo("sold out");
        assertThat(words.money(Money.usDollars("12250.00"))).isEqualTo("$12,250.00");
        assertThat(words.money(new Money(2150, java.util.Currency.getInstance("CHF"))))
                .isEqualTo("21.50\u00A0CHF");
        assertThat(words.months(MonthSet.between(Month.NOVEMBER, Month.FEBRUARY)))
                .isEqualTo("Nov–Feb");
        assertThat(words.months(MonthSet.ALL)).isEqualTo("all year");
        assertThat(words.size(StockSize.read("5-6 ft B&B").orThrow(), ItemForm.REGULAR))
                .isEqualTo("5–6 ft B&B");
        assertThat(words.length(new LengthRange(90, 150))).isEqualTo("3–5 ft");
    }

    @Test
    void lightWithoutAGapIsARange() {
        assertThat(words.exposure(Set.of(Exposure.FULL_SUN, Exposure.PART_SUN, Exposure.PART_SHADE)))
                .isEqualTo("full sun to part shade");
        assertThat(words.exposure(Set.of(Exposure.FULL_SUN, Exposure.PART_SHADE)))
                .isEqualTo("full sun, part shade");
    }

    @Test
    void cautionsNameWhomTheyConcern() {
        assertThat(words.caution(Caution.read("toxic: dogs, people - seeds deadly if eaten")
                        .orThrow()))
                .isEqualTo("Poisonous to people and dogs: seeds deadly if eaten");
    }

    @Test
    void aMissingWordOrValueIsAnExceptionNeverAKeyOnPaper() {
        assertThatThrownBy(() -> words.text("no.such"))
                .isInstanceOf(MissingContent.class)
                .hasMessage("word no.such is missing from the en wording");
        assertThatThrownBy(() -> words.text("stock.now", Map.of()))
                .isInstanceOf(MissingContent.class)
                .hasMessage("value {count} of word stock.now is missing from what was given to be worded");
    }
}
