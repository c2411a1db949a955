package org.benchleaf.shared.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Currency;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/// Acidity, weeks and money.
class SmallMeasuresTest {
    private static final Currency DOLLARS = Currency.getInstance("USD");

    @ParameterizedTest
    @CsvSource({"5.0-6.5, 5.0-6.5", "pH 4.5 to 6, 4.5-6.0", "7, 7.0"})
    void readsAcidity(String text, String written) {
        assertThat(PhRange.read(text).orThrow().toString()).isEqualTo(written);
    }

    @ParameterizedTest
    @CsvSource({"7-5, ph.reversed", "2-5, ph.unknown", "5-11, ph.unknown", "sour, ph.unknown"})
    void refusesImpossibleAcidity(String text, String key) {
        assertThat(PhRange.read(text).refusal())
                .hasValueSatisfying(problem -> assertThat(problem.key()).isEqualTo(key));
    }

    // ISO 8601: week 1 holds the year's first Thursday, so 2027 starts in week 53 of 2026
    @ParameterizedTest
    @CsvSource({"2027-01-01, 2026-W53", "2027-01-04, 2027-W01", "2027-04-12, 2027-W15", "2026-11-25, 2026-W48"})
    void countsWeeksByIso8601(LocalDate day, String week) {
        assertThat(YearWeek.of(day).toString()).isEqualTo(week);
        assertThat(YearWeek.read(day.toString())).isEqualTo(YearWeek.read(week));
    }

    @Test
    void startsAWeekOnItsMonday() {
        assertThat(YearWeek.read("2027-W15").orThrow().monday()).isEqualTo("2027-04-12");
        assertThat(YearWeek.read("2026-W53").orThrow().monday()).isEqualTo("2026-12-28");
    }

    @ParameterizedTest
    @ValueSource(strings = {"2027-W00", "2027-W53", "2027-W54", "W14", "spring", "2027-13-01"})
    void refusesWeeksThatDoNotExist(String text) {
        assertThat(YearWeek.read(text).refusal()).isPresent();
    }

    @Property
    void findsTheWeekOfEveryMonday(
            @ForAll @IntRange(min = 2001, max = 2098) int year, @ForAll @IntRange(min = 1, max = 52) int week) {
        YearWeek one = new YearWeek(year, week);
        assertThat(YearWeek.of(one.monday())).isEqualTo(one);
        assertThat(YearWeek.read(one.toString()).orThrow()).isEqualTo(one);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        21.50 | 21.50 USD
        $21.50 | 21.50 USD
        1,250 | 1250.00 USD
        12 CAD | 12.00 CAD
        """)
    void readsPrices(String text, String written) {
        assertThat(Money.read(text, DOLLARS).orThrow().toString()).isEqualTo(written);
    }

    @ParameterizedTest
    @ValueSource(strings = {"-3", "free", "1.234", "12 XXY", "1.2.3"})
    void refusesWhatIsNoPrice(String text) {
        assertThat(Money.read(text, DOLLARS).refusal())
                .hasValueSatisfying(problem -> assertThat(problem.key()).isEqualTo("money.unknown"));
    }
}
