package org.benchleaf.app.web.walk;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.benchleaf.app.browser.Chromium;
import org.benchleaf.app.browser.InChromium;
import org.benchleaf.app.browser.Look;
import org.benchleaf.app.browser.Sight;
import org.benchleaf.catalog.walk.Sighting;
import org.benchleaf.catalog.walk.Walk;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.stock.Condition;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/// At nine one press turns the walk into this week's bulletin.
@ExtendWith(InChromium.class)
class BulletinPagesTest {
    private final HttpClient http = HttpClient.newHttpClient();

    @TempDir
    Path folder;

    private WalkShop shop;

    @BeforeEach
    void walk() throws IOException {
        shop = WalkShop.open(folder, WalkShop.PLANTS, WalkShop.STOCK);
        Files.write(shop.folder().resolve("photographs").resolve("walk-sighting-2.jpg"), Pictures.withPlace());
        see("sighting-1", "S0003", Optional.empty(), 44, Condition.FULL_FALL_COLOR);
        see("sighting-2", "S0001", Optional.of("walk-sighting-2.jpg"), 58, Condition.WINTER_HUE);
        see("sighting-3", "S9999", Optional.empty(), 12, Condition.IN_BLOOM); // no such lot: a conflict
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private void see(String key, String lot, Optional<String> photo, int count, Condition condition) {
        var plant = shop.benchleaf()
                .ledger()
                .lot(lot.equals("S9999") ? "S0002" : lot)
                .orElseThrow()
                .item()
                .plant();
        Instant now = Instant.now().truncatedTo(ChronoUnit.SECONDS);
        shop.benchleaf()
                .walks()
                .note(new Sighting(
                        key,
                        new Walk("walk-0001", "Ann", now),
                        plant,
                        Optional.empty(),
                        Optional.of(lot),
                        "",
                        Set.of(condition),
                        Optional.of(61),
                        Optional.of(count),
                        photo,
                        "<b>best</b> row",
                        now))
                .orThrow();
    }

    private HttpResponse<byte[]> get(String path) throws IOException, InterruptedException {
        return http.send(
                HttpRequest.newBuilder(URI.create(shop.at(path))).build(), HttpResponse.BodyHandlers.ofByteArray());
    }

    private static String text(HttpResponse<byte[]> page) {
        return new String(page.body(), java.nio.charset.StandardCharsets.UTF_8);
    }

    private String week() {
        return YearWeek.of(shop.benchleaf().today()).toString();
    }

    @ParameterizedTest
    @EnumSource(Look.class)
    void isMadeOfTheWalkEditedAndPublished(Look look, Chromium chromium) throws Exception {
        try (Sight sight = chromium.open(look, options -> options.setJavaScriptEnabled(true))) {
            Page page = sight.page();
            shop.signIn(sight);
            sight.go(shop.at("/bulletin"));
            sight.isSound("bulletin, none yet");
            sight.go(shop.at("/bulletin-desk"));
            assertThat(page.locator(".desk-choices > li")).hasCount(2);
            assertThat(page.locator("#why-sighting-1"))
                    .hasValue(
                            "In full fall color now, red; stands 24 in already, of 3–5 ft when grown; next it flowers, Jun");
            page.getByLabel("First line").fill("First frost is near.");
            page.locator("#in-sighting-1").check();
            page.locator("#place-sighting-1").fill("2");
            page.locator("#in-sighting-2").check();
            page.locator("#place-sighting-2").fill("1");
            page.locator("#why-sighting-2").fill("Bronze <i>all</i> winter");
            sight.isSound("bulletin, being made");
            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Save and publish"))
                    .click();

            assertThat(page).hasURL(shop.at("/bulletin/" + week()));
            assertThat(page.locator(".pick").first()).containsText("Bronze <i>all</i> winter");
            assertThat(page.locator(".pick").first().locator("img")).isVisible();
            assertThat(page.locator(".pick").nth(1)).containsText("Itea virginica");
            assertThat(page.locator(".pick").nth(1)).containsText("44 now");
            sight.isSound("bulletin");
        }
    }

    @Test
    void everybodySeesItWithoutACookieAndCachesKeepIt() throws Exception {
        assertThat(text(get("/bulletin"))).contains("There is no bulletin yet.");
        assertThat(get("/bulletin/" + week()).statusCode()).isEqualTo(404);
        publish(0);

        HttpResponse<byte[]> page = get("/bulletin");

        assertThat(text(page)).contains("In full fall color").contains("44 now").contains("$18.50");
        assertThat(page.headers().firstValue("Set-Cookie")).isEmpty();
        assertThat(page.headers().firstValue("ETag")).isPresent();
        assertThat(get("/bulletin/" + week()).body()).isEqualTo(page.body());
    }

    @Test
    void tellsStrangersNoMoreThanTheShopDoes() throws Exception {
        publish(0);
        Files.writeString(
                shop.folder().resolve("settings.properties"),
                "\ncounts = hidden\nprices = hidden\n",
                StandardOpenOption.APPEND);
        shop.stopServer();
        shop.startServer();

        assertThat(text(get("/bulletin")))
                .contains("In full fall color")
                .contains("here now")
                .doesNotContain("44 now", "$18.50", "print.pdf");
        assertThat(get("/bulletin/" + week() + "/print.pdf").statusCode()).isEqualTo(404);
    }

    @Test
    void aDraftIsSeenByNobodyElse() throws Exception {
        assertThat(save(0, "no").statusCode()).isEqualTo(303);

        assertThat(get("/bulletin/" + week()).statusCode()).isEqualTo(404);
        assertThat(get("/bulletin/" + week() + "/print.pdf").statusCode()).isEqualTo(404);
    }

    @Test
    void standsOnPaperTooWithTheSameNamesAndReasons() throws Exception {
        publish(0);
        HttpResponse<byte[]> pdf = get("/bulletin/" + week() + "/print.pdf");

        assertThat(pdf.headers().firstValue("Content-Type")).contains("application/pdf");
        try (PDDocument document = Loader.loadPDF(pdf.body())) {
            assertThat(new PDFTextStripper().getText(document).replaceAll("\\s+", " "))
                    .contains("Itea virginica")
                    .contains("In full fall color");
        }
    }

    @Test
    void theSecondOfTwoEditorsIsToldAndLosesNothingTyped() throws Exception {
        publish(0);

        HttpResponse<byte[]> late = save(0, "yes");

        assertThat(late.statusCode()).isEqualTo(409);
        assertThat(text(late)).contains("changed by somebody else").contains("In full fall color");
    }

    @Test
    void whatWasSeenIsReadAndSettledAtTheDeskWithoutScript(Chromium chromium) {
        try (Sight sight = chromium.open(Look.DESK_LIGHT, options -> options)) {
            shop.signIn(sight);
            Page page = sight.go(shop.at("/sightings")).page();
            assertThat(page.locator(".desk-trouble")).containsText("lot \"S9999\" is not in the catalog");
            assertThat(page.getByText("<b>best</b> row").first()).isVisible();
            sight.isSound("sightings");

            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("It was #1 · B4-12"))
                    .click();

            assertThat(page.locator(".desk-trouble")).hasCount(0);
            assertThat(shop.count("S0002")).isEqualTo(12);
        }
    }

    private void publish(int version) throws Exception {
        assertThat(save(version, "yes").statusCode()).isEqualTo(303);
    }

    private HttpResponse<byte[]> save(int version, String publish) throws Exception {
        String form = "form-token=form-token-of-Ann&week=" + week() + "&version=" + version + "&publish=" + publish
                + "&in=sighting-1&place-sighting-1=1&why-sighting-1=In+full+fall+color&greeting=";
        return http.send(
                HttpRequest.newBuilder(URI.create(shop.at("/bulletin-desk")))
                        .headers(List.of(
                                        "Cookie", "walker=Ann",
                                        "Origin", shop.at(""),
                                        "Content-Type", "application/x-www-form-urlencoded")
                                .toArray(String[]::new))
                        .POST(HttpRequest.BodyPublishers.ofString(form))
                        .build(),
                HttpResponse.BodyHandlers.ofByteArray());
    }
}
