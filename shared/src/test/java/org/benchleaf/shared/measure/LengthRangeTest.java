package org.benchleaf.shared.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LengthRangeTest {
    // 1 ft = 30.48 cm and 1 in = 2.54 cm exactly: NIST SP 811 (2008), app. B.8
    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', textBlock = """
        6-8 ft,        183, 244
        18-24 in,       46,  61
        18-24",         46,  61
        18 in - 2 ft,   46,  61
        60–90 cm,       60,  90
        1.5-2 m,       150, 200
        3 m,           300, 300
        4 ft 6 in,     137, 137
        5'6",          168, 168
        2½ ft,          76,  76
        1.5m,          150, 150
        """)
    void readsEveryUnitAsWholeCentimetres(String text, int lowCm, int highCm) {
        assertThat(LengthRange.read(text).orThrow()).isEqualTo(new LengthRange(lowCm, highCm));
    }

    @ParameterizedTest
    @CsvSource({
        "8-6 ft, length.reversed",
        "6 to 8, length.unit",
        "tall, length.unknown",
        "0 cm, length.range",
        "900 m, length.range"
    })
    void saysWhatIsWrongWithALength(String text, String key) {
        assertThat(LengthRange.read(text).refusal())
                .hasValueSatisfying(problem -> assertThat(problem.key()).isEqualTo(key));
    }

    @Test
    void takesTheUnitOfItsColumnWhereTheCellHasNone() {
        assertThat(LengthRange.read("6-8", "ft")).isEqualTo(LengthRange.read("6-8 ft"));
        assertThat(LengthRange.read("2 m", "ft")).isEqualTo(LengthRange.read("2 m"));
    }

    @Property
    void readsBackWhatItWrites(
            @ForAll @IntRange(min = 1, max = 15000) int one, @ForAll @IntRange(min = 1, max = 15000) int other) {
        LengthRange range = new LengthRange(Math.min(one, other), Math.max(one, other));
        assertThat(LengthRange.read(range.toString()).orThrow()).isEqualTo(range);
    }

    @Property
    void givesBackEveryWholeFootAndInch(
            @ForAll @IntRange(min = 3, max = 300) int feet, @ForAll @IntRange(min = 1, max = 35) int inches) {
        assertThat(LengthStyle.IMPERIAL.write(LengthRange.ofFeet(feet, feet))).isEqualTo(feet + " ft");
        assertThat(LengthStyle.IMPERIAL.write(LengthRange.read(inches + " in").orThrow()))
                .isEqualTo(inches + " in");
    }

    @ParameterizedTest
    @CsvSource({
        "3-5 ft, 3–5 ft, 0.9–1.5 m",
        "18-24 in, 18–24 in, 45–60 cm",
        "60-80 ft, 60–80 ft, 18–24 m",
        "2-4 ft, 2–4 ft, 0.6–1.2 m"
    })
    void writesForPeopleInTheirUnits(String text, String imperial, String metric) {
        LengthRange range = LengthRange.read(text).orThrow();
        assertThat(LengthStyle.IMPERIAL.write(range)).isEqualTo(imperial);
        assertThat(LengthStyle.METRIC.write(range)).isEqualTo(metric);
        assertThat(LengthStyle.BOTH.write(range)).isEqualTo(imperial + " (" + metric + ")");
    }

    @Test
    void cannotBeMadeUpsideDown() {
        assertThatThrownBy(() -> new LengthRange(90, 60))
                .hasMessage("length must be 1 to 15000 cm, low before high; got 90-60 cm");
    }
}
