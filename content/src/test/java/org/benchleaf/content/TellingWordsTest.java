package org.benchleaf.content;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Optional;
import org.benchleaf.shared.measure.LengthStyle;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.stock.Availability;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TellingWordsTest {
    private static final YearWeek APRIL = new YearWeek(2027, 14);
    private final Wording words = Wording.open(ContentPack.builtIn(), Locale.ENGLISH, LengthStyle.BOTH);

    // ISO 8601: the Monday of week 14 of 2027 is 5 April
    @ParameterizedTest
    @CsvSource({
        "EXACT,  9, 9 now,      9 from the week of 5 April 2027,      9 more from the week of 5 April 2027",
        "COARSE, 9, few now,    few from the week of 5 April 2027,    a few more from the week of 5 April 2027",
        "COARSE, 10, plenty now, plenty from the week of 5 April 2027, plenty more from the week of 5 April 2027",
        "HIDDEN, 9, here now,   from the week of 5 April 2027,        more from the week of 5 April 2027",
    })
    void soManyAreToldAsExactlyAsTheShopWants(Telling.Counts counts, int count, String now, String from, String more) {
        Wording told = words.telling(new Telling(counts, true, Optional.empty()));
        assertThat(told.availability(new Availability.InStock(count))).isEqualTo(now);
        assertThat(told.availability(new Availability.From(APRIL, count))).isEqualTo(from);
        assertThat(told.more(APRIL, count)).isEqualTo(more);
    }
}
