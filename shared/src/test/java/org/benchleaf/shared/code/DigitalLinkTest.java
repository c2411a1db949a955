package org.benchleaf.shared.code;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.net.URI;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/// The worked addresses are those of GS1's Digital Link standard as the documentation of an open bar code library
/// (github.com/bwipp/postscriptbarcode, wiki "GS1 Digital Link URIs") repeats them; 0952 is GS1's prefix for examples
/// (from memory).
class DigitalLinkTest {
    private static final URI GS1 = URI.create("https://id.gs1.org");
    private static final Gtin GTIN = new Gtin("9521234543213");

    @Test
    void aTradeNumberIsWrittenWithFourteenDigits() {
        assertThat(new DigitalLink(GS1, GTIN, Optional.empty())).hasToString("https://id.gs1.org/01/09521234543213");
    }

    @Test
    void aLotFollowsTheTradeNumber() {
        assertThat(DigitalLink.of(GS1, GTIN, "ABC123")).hasToString("https://id.gs1.org/01/09521234543213/10/ABC123");
    }

    @Test
    void aShopsOwnServerIsAllowed() {
        assertThat(new DigitalLink(URI.create("https://plants.example"), new Gtin("036000241457"), Optional.empty()))
                .hasToString("https://plants.example/01/00036000241457");
    }

    // RFC 3986, 2.1: what is neither letter, digit nor - . _ ~ is written as %XX
    @Test
    void whatAnAddressCannotHoldIsEncoded() {
        assertThat(DigitalLink.of(GS1, GTIN, "A/B 1+2").path()).isEqualTo("/01/09521234543213/10/A%2FB%201%2B2");
        assertThat(DigitalLink.of(GS1, GTIN, "b4_2.x").path()).endsWith("/10/b4_2.x");
    }

    // GS1 General Specifications, AI 10: up to 20 characters (from memory)
    @Test
    void aLotThatIsTooLongForTradeIsLeftOut() {
        assertThat(DigitalLink.of(GS1, GTIN, "123456789012345678901").lot()).isEmpty();
        assertThat(DigitalLink.of(GS1, GTIN, "12345678901234567890").lot()).isPresent();
        assertThatThrownBy(() -> new DigitalLink(GS1, GTIN, Optional.of(" ")))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
