package org.benchleaf.shared.code;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.net.URI;
import java.util.HashSet;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class KeysTest {
    private static final String ALPHABET = "0123456789BCDFGHJKMNPQRSTVWXY";

    @Test
    void neverGivesAKeyTwice() {
        Set<String> seen = new HashSet<>();
        for (int serial = 0; serial < 200_000; serial++) {
            assertThat(seen.add(PlantKey.ofSerial(serial).text())).isTrue();
        }
    }

    @Property
    void noticesEveryWrongCharacter(
            @ForAll @LongRange(max = 389_710_830L) long serial,
            @ForAll @IntRange(max = 6) int place,
            @ForAll @IntRange(max = 28) int other) {
        String key = PlantKey.ofSerial(serial).text();
        char wrong = ALPHABET.charAt(other);
        String damaged = key.substring(0, place) + wrong + key.substring(place + 1);
        assertThat(PlantKey.read(damaged).toOptional().isPresent()).isEqualTo(damaged.equals(key));
    }

    @Property
    void noticesSwappedNeighbours(
            @ForAll @LongRange(max = 389_710_830L) long serial, @ForAll @IntRange(max = 4) int place) {
        String key = PlantKey.ofSerial(serial).text();
        String swapped = key.substring(0, place) + key.charAt(place + 1) + key.charAt(place) + key.substring(place + 2);
        assertThat(PlantKey.read(swapped).toOptional().isPresent()).isEqualTo(swapped.equals(key));
    }

    @Property
    void looksLikeNoNumberAndNoDate(@ForAll @LongRange(max = 389_710_830L) long serial) {
        assertThat(PlantKey.ofSerial(serial).text()).matches("[B-DF-HJKMNP-TV-Y][0-9B-DF-HJKMNP-TV-Y]{6}");
    }

    @Test
    void readsKeysAsPeopleTypeThem() {
        PlantKey key = PlantKey.ofSerial(7);
        assertThat(PlantKey.read(" " + key.text().toLowerCase(java.util.Locale.ROOT))
                        .orThrow())
                .isEqualTo(key);
        assertThat(PlantKey.read("1234567").refusal())
                .hasValueSatisfying(problem -> assertThat(problem.key()).isEqualTo("key.unknown"));
    }

    @Property
    void findsItsWayBackFromThePrintedAddress(
            @ForAll @LongRange(max = 389_710_830L) long serial, @ForAll @IntRange(min = 1, max = 999) int number) {
        URI base = LiveLink.readBase("https://shop.example:8443/").orThrow();
        LiveLink item = LiveLink.of(base, new ItemKey(PlantKey.ofSerial(serial), number));
        LiveLink plant = LiveLink.of(base, PlantKey.ofSerial(serial));
        assertThat(LiveLink.read(item.toString()).orThrow()).isEqualTo(item);
        assertThat(LiveLink.read(item.forCode()).orThrow()).isEqualTo(item);
        assertThat(LiveLink.read(plant.forCode()).orThrow()).isEqualTo(plant);
    }

    // the alphanumeric mode of ISO/IEC 18004 holds digits, capitals, blank and $ % * + - . / :
    @Test
    void printsAnAddressInTheAlphanumericModeOfQr() {
        LiveLink link = LiveLink.of(URI.create("https://plants.shop.example"), new ItemKey(PlantKey.ofSerial(3), 12));
        assertThat(link.forCode()).matches("[0-9A-Z $%*+./:-]+");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "ftp://shop.example",
                "shop.example",
                "https://shop.example/plants",
                "https://a@shop.example",
                "https://shop.example?x=1",
                "not an address"
            })
    void refusesABaseThatCouldNotBePrinted(String text) {
        assertThat(LiveLink.readBase(text).refusal())
                .hasValueSatisfying(problem -> assertThat(problem.key()).isEqualTo("base.unknown"));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/check-values/gs1-check-digits.csv", numLinesToSkip = 1)
    void computesPublishedCheckDigits(String kind, String body, int weightedSum, int checkDigit, String full) {
        assertThat(Gtin.checkDigit(body)).as(kind).isEqualTo(checkDigit);
        if (full.length() <= 14) {
            assertThat(Gtin.read(full).orThrow().padded()).hasSize(14).endsWith(full);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "036000241458",
                "03600024145",
                "123456789012345",
                "03600024145A",
                "\uFF10\uFF13\uFF16\uFF10\uFF10\uFF10\uFF12\uFF14\uFF11\uFF14\uFF15\uFF17",
                ""
            })
    void refusesNumbersThatAreNoGtin(String text) {
        assertThat(Gtin.read(text).refusal()).isPresent();
    }

    @Test
    void cannotBeMadeWithAWrongCheckDigit() {
        assertThatThrownBy(() -> new Gtin("036000241458")).hasMessage("not a GTIN: 036000241458");
    }
}
