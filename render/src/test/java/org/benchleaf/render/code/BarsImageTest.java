package org.benchleaf.render.code;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.benchleaf.shared.code.Gtin;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BarsImageTest {
    /// Codes of the digits on the right half (R-codes) and first digits' parities: GS1 General Specifications, from
    /// memory; the numbers are those of gs1-check-digits.csv.
    private static final List<String> RIGHT = List.of(
            "1110010", "1100110", "1101100", "1000010", "1011100", "1001110", "1010000", "1000100", "1001000",
            "1110100");

    private static final List<String> PARITIES =
            List.of("LLLLLL", "LLGLGG", "LLGGLG", "LLGGGL", "LGLLGG", "LGGLLG", "LGGGLL", "LGLGLG", "LGLGGL", "LGGLGL");

    @ParameterizedTest
    @CsvSource({"5012345678900", "7300011000017", "4006381333931", "036000241457", "123456789012"})
    void barsAreThoseOfTheStandard(String digits) {
        BarsImage bars = BarsImage.of(Gtin.read(digits).orThrow());
        assertThat(bars.digits()).isEqualTo(digits);
        assertThat(drawn(bars)).isEqualTo(expected(digits.length() == 12 ? "0" + digits : digits));
    }

    @Test
    void quietZonesAreElevenAndSevenOrNineAndNine() {
        BarsImage ean = BarsImage.of(Gtin.read("5012345678900").orThrow());
        assertThat(ean.widthInModules()).isEqualTo(11 + 95 + 7);
        assertThat(ean.bars().getFirst().from()).isEqualTo(11);
        BarsImage upc = BarsImage.of(Gtin.read("036000241457").orThrow());
        assertThat(upc.widthInModules()).isEqualTo(9 + 95 + 9);
        assertThat(upc.bars().getFirst().from()).isEqualTo(9);
    }

    /// Nominal 0.330 mm, at least 80 % of it (GS1 General Specifications, from memory): 4 dots of 300 dpi are 0.339 mm,
    /// 3 dots of 203 dpi are 0.375 mm.
    @ParameterizedTest
    @CsvSource({"300, 4", "203, 3", "600, 8"})
    void aModuleIsWholeDots(int dpi, int dots) {
        assertThat(BarsImage.dots(dpi)).isEqualTo(dots);
    }

    @Test
    void aCaseHasNoBarsForATill() {
        Gtin box = Gtin.read("10036000241454").orThrow();
        assertThat(BarsImage.canBe(box)).isFalse();
        assertThatThrownBy(() -> BarsImage.of(box)).isInstanceOf(IllegalArgumentException.class);
    }

    private static String drawn(BarsImage bars) {
        char[] modules = "0".repeat(bars.widthInModules()).toCharArray();
        for (BarsImage.Bar bar : bars.bars()) {
            for (int at = bar.from(); at < bar.from() + bar.width(); at++) {
                modules[at] = '1';
            }
        }
        int quiet = bars.bars().getFirst().from();
        return new String(modules, quiet, 95);
    }

    private static String expected(String ean) {
        StringBuilder text = new StringBuilder("101");
        String parity = PARITIES.get(ean.charAt(0) - '0');
        for (int place = 1; place <= 6; place++) {
            String right = RIGHT.get(ean.charAt(place) - '0');
            text.append(
                    parity.charAt(place - 1) == 'L'
                            ? right.replace('0', 'x').replace('1', '0').replace('x', '1')
                            : new StringBuilder(right).reverse());
        }
        text.append("01010");
        for (int place = 7; place <= 12; place++) {
            text.append(RIGHT.get(ean.charAt(place) - '0'));
        }
        return text.append("101").toString();
    }
}
