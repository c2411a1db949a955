package org.benchleaf.shared.measure;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ZoneRangeTest {
    @ParameterizedTest
    @CsvSource({
        "4-8, 4a, 8b",
        "5b-9a, 5b, 9a",
        "zones 4 to 8, 4a, 8b",
        "3 – 7, 3a, 7b",
        "6, 6a, 6b",
        "6a, 6a, 6a",
        "zone 4a through zone 7b, 4a, 7b"
    })
    void readsWholeZonesAsBothTheirHalves(String text, String coldest, String warmest) {
        assertThat(ZoneRange.read(text).orThrow())
                .isEqualTo(new ZoneRange(
                        HardinessZone.read(coldest).orThrow(),
                        HardinessZone.read(warmest).orThrow()));
    }

    @ParameterizedTest
    @CsvSource({
        "8-4, zone.reversed",
        "14c, zone.unknown",
        "4-14, zone.unknown",
        "0-4, zone.unknown",
        "cold, zone.unknown"
    })
    void refusesReversedAndUnknownZones(String text, String key) {
        assertThat(ZoneRange.read(text).refusal())
                .hasValueSatisfying(problem -> assertThat(problem.key()).isEqualTo(key));
    }

    @Test
    void countsHalfZonesBeyondEitherEnd() {
        ZoneRange range = ZoneRange.read("5-8").orThrow();
        assertThat(range.halfZonesOutside(HardinessZone.of(4, 'a'))).isEqualTo(-2);
        assertThat(range.halfZonesOutside(HardinessZone.of(5, 'a'))).isZero();
        assertThat(range.halfZonesOutside(HardinessZone.of(8, 'b'))).isZero();
        assertThat(range.halfZonesOutside(HardinessZone.of(9, 'b'))).isEqualTo(2);
    }

    @ParameterizedTest
    @CsvSource({"3b+, 3b, 3b+", "zone 4 and warmer, 4a, 4+", "10-13, 10a, 10+", "9b-13b, 9b, 9b+"})
    void keepsARangeWithoutAWarmLimitOpen(String text, String coldest, String written) {
        ZoneRange range = ZoneRange.read(text).orThrow();
        assertThat(range)
                .isEqualTo(ZoneRange.andWarmer(HardinessZone.read(coldest).orThrow()));
        assertThat(range.hasWarmLimit()).isFalse();
        assertThat(range).hasToString(written);
    }

    @Property
    void readsBackWhatItWrites(@ForAll @IntRange(max = 25) int one, @ForAll @IntRange(max = 25) int other) {
        ZoneRange range =
                new ZoneRange(new HardinessZone(Math.min(one, other)), new HardinessZone(Math.max(one, other)));
        assertThat(ZoneRange.read(range.toString()).orThrow()).isEqualTo(range);
    }
}
