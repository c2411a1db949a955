package org.benchleaf.shared.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Month;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MonthSetTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        Apr-Jun | Apr-Jun
        4-6 | Apr-Jun
        Nov–Feb | Nov-Feb
        november to february | Nov-Feb
        May | May
        May, Jul-Aug | May; Jul-Aug
        Sept | Sep
        year-round | Jan-Dec
        """)
    void readsRunsThatMayWrapAtTheYearsEnd(String text, String written) {
        assertThat(MonthSet.read(text).orThrow().toString()).isEqualTo(written);
    }

    @ParameterizedTest
    @ValueSource(strings = {"spring", "13", "0", "Mayhem", "Apr-Jun-Aug", "", "5-13"})
    void refusesWhatIsNoMonth(String text) {
        assertThat(MonthSet.read(text).refusal()).isPresent();
    }

    @Test
    void countsMonthsApartAroundTheYear() {
        MonthSet winter = MonthSet.between(Month.NOVEMBER, Month.FEBRUARY);
        assertThat(winter.monthsApart(MonthSet.between(Month.MARCH, Month.APRIL)))
                .isEqualTo(1);
        assertThat(winter.monthsApart(MonthSet.between(Month.OCTOBER, Month.OCTOBER)))
                .isEqualTo(1);
        assertThat(winter.monthsApart(MonthSet.between(Month.JUNE, Month.JUNE))).isEqualTo(4);
        assertThat(winter.monthsApart(MonthSet.between(Month.JANUARY, Month.MAY)))
                .isZero();
    }

    @Property
    void readsBackWhatItWrites(@ForAll @IntRange(min = 1, max = 0xFFF) int bits) {
        assertThat(MonthSet.read(new MonthSet(bits).toString()).orThrow()).isEqualTo(new MonthSet(bits));
    }

    @Property
    void measuresTheSameWayFromBothSides(
            @ForAll @IntRange(min = 1, max = 0xFFF) int one, @ForAll @IntRange(min = 1, max = 0xFFF) int other) {
        MonthSet a = new MonthSet(one);
        MonthSet b = new MonthSet(other);
        assertThat(a.monthsApart(b)).isEqualTo(b.monthsApart(a)).isBetween(0, 6);
        assertThat(a.monthsApart(b) == 0).isEqualTo(!a.and(b).isEmpty());
    }
}
