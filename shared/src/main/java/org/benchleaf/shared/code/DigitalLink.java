package org.benchleaf.shared.code;

import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/// A trade number as a web address after GS1 Digital Link: `https://shop.example/01/09521234543213/10/L1`. Tills and
/// warehouses read the number out of it; a telephone opens the page.
///
/// @param base scheme, host and port of the shop's server
/// @param gtin trade number of the item; written with 14 digits
/// @param lot its batch, when the code stands for one; at most 20 characters (GS1 General Specifications, AI 10)
public record DigitalLink(URI base, Gtin gtin, Optional<String> lot) {
    /// GS1 application identifiers: trade number, and batch or lot.
    private static final String TRADE_NUMBER = "01";

    private static final String LOT = "10";
    private static final int LONGEST_LOT = 20;

    public DigitalLink {
        if (lot.filter(text -> text.isBlank() || text.length() > LONGEST_LOT).isPresent()) {
            throw new IllegalArgumentException("a lot has 1 to 20 characters; got " + lot.get());
        }
    }

    /// With the lot where it can be told: a longer one is left out.
    public static DigitalLink of(URI base, Gtin gtin, String lot) {
        return new DigitalLink(
                base, gtin, Optional.of(lot).filter(text -> !text.isBlank() && text.length() <= LONGEST_LOT));
    }

    /// The path on the server.
    public String path() {
        return "/" + TRADE_NUMBER + "/" + gtin.padded()
                + lot.map(text -> "/" + LOT + "/" + encoded(text)).orElse("");
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8)
                .replace("+", "%20")
                .replace("*", "%2A");
    }

    /// The address, in a code and for people: its lot tells small letters from capitals.
    @Override
    public String toString() {
        return base + path();
    }
}
