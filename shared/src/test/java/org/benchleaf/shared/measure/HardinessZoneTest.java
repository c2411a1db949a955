package org.benchleaf.shared.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HardinessZoneTest {
    @ParameterizedTest
    @CsvFileSource(resources = "/check-values/hardiness-zones.csv", numLinesToSkip = 1)
    void hasTheBoundsOfTheUsdaMap(String halfZone, int minF, int maxF) {
        HardinessZone zone = HardinessZone.read(halfZone).orThrow();
        assertThat(zone.minimumFahrenheit()).isEqualTo(minF);
        assertThat(zone.maximumFahrenheit()).isEqualTo(maxF);
        assertThat(HardinessZone.atFahrenheit(minF)).contains(zone);
        assertThat(HardinessZone.atFahrenheit(Math.nextDown((double) maxF))).contains(zone);
    }

    // worked from the map's bounds; -28.9 °C is -20.02 °F and so still 4b, though the map prints 5a from -28.9 °C up
    @ParameterizedTest
    @CsvSource({"-17.9, 6b", "-17.7, 7a", "-28.9, 4b", "-28.8, 5a"})
    void convertsCelsiusExactlyBeforeItDecides(double celsius, String halfZone) {
        assertThat(HardinessZone.atCelsius(celsius))
                .contains(HardinessZone.read(halfZone).orThrow());
    }

    @ParameterizedTest
    @CsvSource({"-3, 6b", "-20, 5a", "69.9, 13b", "-60, 1a"})
    void givesTheLowerBoundToTheZone(double fahrenheit, String halfZone) {
        assertThat(HardinessZone.atFahrenheit(fahrenheit))
                .contains(HardinessZone.read(halfZone).orThrow());
    }

    @ParameterizedTest
    @ValueSource(doubles = {-60.1, 70, 120, Double.NaN})
    void knowsNoZoneOutsideTheMap(double fahrenheit) {
        assertThat(HardinessZone.atFahrenheit(fahrenheit)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"14c", "0a", "14a", "6", "a6", "", "zone"})
    void refusesWhatIsNoHalfZone(String text) {
        assertThat(HardinessZone.read(text).refusal()).hasValueSatisfying(problem -> {
            assertThat(problem.key()).isEqualTo("zone.unknown");
            assertThat(problem.details()).containsEntry("read", text);
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"6b", "6 B", "zone 6b", "USDA zone 6b"})
    void readsTheFormsThatPeopleWrite(String text) {
        assertThat(HardinessZone.read(text).orThrow()).isEqualTo(HardinessZone.of(6, 'b'));
    }

    @Property
    void readsBackWhatItWrites(@ForAll @IntRange(max = 25) int half) {
        HardinessZone zone = new HardinessZone(half);
        assertThat(HardinessZone.read(zone.toString()).orThrow()).isEqualTo(zone);
    }

    @Property
    void putsEveryTemperatureOfTheMapBetweenItsBounds(@ForAll @DoubleRange(min = -60, max = 69.99) double fahrenheit) {
        HardinessZone zone = HardinessZone.atFahrenheit(fahrenheit).orElseThrow();
        assertThat(fahrenheit).isBetween((double) zone.minimumFahrenheit(), (double) zone.maximumFahrenheit());
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 26})
    void cannotBeMadeOutsideTheMap(int half) {
        assertThatThrownBy(() -> new HardinessZone(half))
                .hasMessage("hardiness half zone must be 0 (1a) to 25 (13b); got " + half);
    }
}
