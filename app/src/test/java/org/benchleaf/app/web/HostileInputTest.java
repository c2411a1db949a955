package org.benchleaf.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.benchleaf.app.Shop;
import org.benchleaf.app.browser.Chromium;
import org.benchleaf.app.browser.InChromium;
import org.benchleaf.app.browser.Look;
import org.benchleaf.app.browser.Sight;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/// Markup in every field of a list and every part of an address is shown and never run; nothing outside the shop's
/// folders is sent; nothing that is too long is read.
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class HostileInputTest {
    /// Breaks out of text, attributes, styles, comments and data; marks the window when it runs.
    private static final String EVIL =
            "</script></style></title>--><img src=x onerror=window.ran=1>'`<svg/onload=window.ran=1>";

    private static final String CELL = "\"" + EVIL.replace("\"", "\"\"") + "\"";
    private static final String PLANTS =
            "name,common_names,life_form,hardiness,description,selling_note,family,photographs,source\n"
                    + "Itea virginica," + String.join(",", CELL, "shrub", "5-9", CELL, CELL, CELL, CELL, CELL) + "\n"
                    + "Clethra alnifolia,summersweet,shrub,4-9,,,,,from memory\n";
    private static final String STOCK = "lot,name,size,count,price,place,condition\n"
            + "L1,Itea virginica,#3,60,$18.50," + CELL + "," + CELL + "\n";

    private Shop shop;

    @BeforeAll
    void open(@TempDir Path folder) {
        shop = Shop.with(folder, "shop.name = " + EVIL + "\nshop.line = " + EVIL + "\n", PLANTS, STOCK);
    }

    @AfterAll
    void close() {
        shop.close();
    }

    private List<String> paths() {
        String evil = URLEncoder.encode(EVIL, StandardCharsets.UTF_8);
        String itea = shop.plant("Itea virginica");
        String key = itea.substring("/p/".length());
        return List.of(
                "/",
                "/available",
                "/available?genus=" + evil,
                itea,
                "/p/" + evil.replace("+", "%20").replace("%2F", ""),
                "/compare?p=" + key + "&p=" + evil + "&add=" + evil,
                "/find?q=zone+6+" + evil + "&with=" + evil + "&plant=" + evil + "&skip=" + evil,
                "/nowhere/" + evil.replace("+", "%20").replace("%2F", ""));
    }

    @Test
    void markupInEveryFieldIsShownAndNeverBecomesAnElement() {
        for (String path : paths()) {
            assertThat(shop.get(path).body())
                    .as(path)
                    .doesNotContain("<img src=x")
                    .doesNotContain("<svg/onload")
                    .doesNotContainPattern("</style>(?!\\s*</head>)");
        }
        assertThat(shop.get(shop.plant("Itea virginica")).body()).contains("&lt;img src=x");
    }

    @Test
    void aSpreadsheetProgramIsHandedNoFormula() throws IOException {
        String csv = shop.get("/available.csv").body();
        assertThat(csv.lines().skip(1).flatMap(line -> List.of(line.split(",")).stream()))
                .noneMatch(cell -> cell.matches("[=+@-].*"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/photo/../settings.properties",
                "/photo/..%2Fsettings.properties",
                "/photo/..%5Csettings.properties",
                "/photo/%2e%2e/settings.properties",
                "/photo/%2e%2e%2fsettings.properties",
                "/photo/....//settings.properties",
                "/photo/%00settings.properties",
                "/photo/%2Fetc%2Fpasswd",
                "/p/..%2F..%2Fsettings.properties",
                "/../settings.properties",
            })
    void nothingOutsideTheFoldersOfPhotographsIsSent(String path) throws IOException {
        String answer = raw("GET " + path + " HTTP/1.1\r\nHost: 127.0.0.1\r\nConnection: close\r\n\r\n");
        assertThat(answer)
                .matches("(?s)HTTP/1\\.1 (400|404) .*")
                .doesNotContain("root:")
                .doesNotContain("shop.name");
    }

    @Test
    void whatIsTooLongIsRefusedAndTheServerGoesOn() throws IOException {
        String head = " HTTP/1.1\r\nHost: 127.0.0.1\r\nConnection: close\r\n";
        assertThat(raw("GET /find?q=" + "a".repeat(200_000) + head + "\r\n")).startsWith("HTTP/1.1 414");
        assertThat(raw("GET /" + head + "X-Long: " + "a".repeat(200_000) + "\r\n\r\n"))
                .startsWith("HTTP/1.1 431");
        assertThat(raw("POST /find" + head + "Content-Length: 99999999999\r\n\r\n"))
                .matches("(?s)HTTP/1\\.1 4\\d\\d .*");
        String many = "&with=x".repeat(500);
        assertThat(shop.get("/find?q=zone+6" + many).statusCode()).isEqualTo(200);
        assertThat(shop.get("/compare?p=" + "a".repeat(3000)).statusCode()).isEqualTo(200);
        assertThat(shop.get("/find?q=" + "zone%206%2C%20".repeat(400)).statusCode())
                .isEqualTo(200);
        assertThat(shop.get("/").statusCode()).isEqualTo(200);
    }

    @Test
    void theServerDoesNotSayWhatItIsMadeOf() throws IOException {
        for (String line :
                List.of("GET /nowhere HTTP/1.1", "GET /\u0001 HTTP/1.1", "BREW / HTTP/1.1", "GET / HTTP/9.9")) {
            assertThat(raw(line + "\r\nHost: 127.0.0.1\r\nConnection: close\r\n\r\n")
                            .toLowerCase())
                    .as(line)
                    .doesNotContain("jetty")
                    .doesNotContain("javalin")
                    .doesNotContain("exception");
        }
    }

    private String raw(String request) throws IOException {
        URI server = URI.create(shop.at("/"));
        try (Socket socket = new Socket(server.getHost(), server.getPort())) {
            socket.setSoTimeout(20_000);
            try {
                socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            } catch (IOException closedEarly) {
                // the answer was sent before all was read: what follows tells
            }
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @ExtendWith(InChromium.class)
    @org.junit.jupiter.api.Nested
    @TestInstance(TestInstance.Lifecycle.PER_CLASS)
    class InARealBrowser {
        @Test
        void nothingRuns(Chromium chromium) {
            List<String> ran = new ArrayList<>();
            try (Sight sight = chromium.open(Look.PHONE_LIGHT, options -> options)) {
                Page page = sight.page();
                for (String path : paths()) {
                    sight.go(shop.at(path));
                    if (Boolean.TRUE.equals(
                            page.evaluate("() => window.ran === 1 || !!document.querySelector('img[src=x]')"))) {
                        ran.add(path);
                    }
                }
            }
            assertThat(ran).isEmpty();
        }
    }
}
