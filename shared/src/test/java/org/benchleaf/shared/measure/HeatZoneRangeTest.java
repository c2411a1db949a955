package org.benchleaf.shared.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class HeatZoneRangeTest {
    @ParameterizedTest
    @CsvFileSource(resources = "/check-values/heat-zones.csv", numLinesToSkip = 1)
    void putsDaysOfHeatIntoTheZonesOfTheSociety(int zone, int moreThan, Integer upTo) {
        int first = zone <= 2 ? moreThan : moreThan + 1;
        assertThat(HeatZoneRange.zoneForDays(first)).isEqualTo(zone);
        if (upTo != null && zone > 1) {
            assertThat(HeatZoneRange.zoneForDays(upTo)).isEqualTo(zone);
        }
    }

    @Test
    void readsEitherOrderOfTheZones() {
        assertThat(HeatZoneRange.read("8-1")).isEqualTo(HeatZoneRange.read("1-8"));
        assertThat(HeatZoneRange.read("1-13").refusal()).isPresent();
    }
}
