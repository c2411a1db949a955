package org.benchleaf.app.web.walk;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FilePayload;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.benchleaf.app.browser.Chromium;
import org.benchleaf.app.browser.InChromium;
import org.benchleaf.app.browser.Look;
import org.benchleaf.app.browser.Sight;
import org.benchleaf.shared.code.LiveLink;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/// Codes read with the camera, and photographs taken with it.
@ExtendWith(InChromium.class)
class WalkCameraTest {
    @TempDir
    Path folder;

    private WalkShop shop;

    @BeforeEach
    void open() {
        shop = WalkShop.open(folder, WalkShop.PLANTS, WalkShop.STOCK);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private String code(String lot) {
        return LiveLink.of(
                        shop.benchleaf().settings().base(),
                        shop.benchleaf().ledger().lot(lot).orElseThrow().item())
                .forCode();
    }

    private Sight walk(Chromium chromium) {
        Sight sight = chromium.open(Look.PHONE_LIGHT, options -> options);
        shop.signIn(sight);
        Page page = sight.go(shop.at("/walk")).page();
        page.getByLabel("Or type or dictate its name").fill("itea");
        assertThat(page.locator("#results a").first()).isVisible();
        return sight;
    }

    private static void tap(Page page, String name) {
        page.getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(name).setExact(true))
                .click();
    }

    @Test
    void theCodeOfARowIsReadWithTheCamera() throws IOException {
        Path film = Files.write(folder.resolve("row.y4m"), Pictures.filmOfCode(code("S0004")));
        try (Chromium filming = Chromium.start(List.of(
                        "--use-fake-device-for-media-stream",
                        "--use-fake-ui-for-media-stream",
                        "--use-file-for-fake-video-capture=" + film));
                Sight sight = walk(filming)) {
            tap(sight.page(), "Scan its code");

            assertThat(sight.page().locator(".which")).hasText("#5 · C1-02 · 22");
        }
    }

    @Test
    void whereTheCameraDoesNotOpenAPhotographOfTheCodeWillDo(Chromium chromium) {
        try (Sight sight = walk(chromium)) {
            Page page = sight.page();
            tap(page, "Scan its code");
            assertThat(page.getByText("The camera does not open")).isVisible();
            sight.isSound("walk, no camera");

            page.setInputFiles(
                    "#code-picture", new FilePayload("code.png", "image/png", Pictures.ofCode(code("S0002"))));

            assertThat(page.locator(".which")).hasText("#1 · B4-12 · 120");
        }
    }

    @Test
    void aPhotographIsSentWithWhatIsSeenAndTellsNoPlace(Chromium chromium) throws IOException {
        try (Sight sight = walk(chromium)) {
            Page page = sight.page();
            page.getByLabel("Or type or dictate its name").fill("moonbeam");
            page.locator("#results a").first().click();
            page.getByText("#1 · B4-12 · 120").click();
            page.setInputFiles("#photo", new FilePayload("IMG_1.jpg", "image/jpeg", Pictures.withPlace()));
            assertThat(page.getByText("Photograph taken")).isVisible();
            tap(page, "Keep");
            assertThat(page.locator("#said")).containsText("Kept");
            assertThat(page.locator("#outbox")).hasText("Nothing waits");
        }
        String file = shop.benchleaf()
                .walks()
                .seenSince(Instant.EPOCH, 1)
                .getFirst()
                .sighting()
                .photo()
                .orElseThrow();
        String kept = Files.readString(shop.folder().resolve("photographs").resolve(file), StandardCharsets.ISO_8859_1);
        assertThat(kept).startsWith("\u00ff\u00d8").doesNotContain("Exif");
    }
}
