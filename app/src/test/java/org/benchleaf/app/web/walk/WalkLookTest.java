package org.benchleaf.app.web.walk;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import java.nio.file.Path;
import org.benchleaf.app.browser.Chromium;
import org.benchleaf.app.browser.InChromium;
import org.benchleaf.app.browser.Look;
import org.benchleaf.app.browser.Sight;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/// Every state of the walk's page, by day and by night: for everyone, and for a cold thumb.
@ExtendWith(InChromium.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class WalkLookTest {
    /// A cold thumb needs more than the 24 px of WCAG 2.2, 2.5.8; 48 px is common practice, no source.
    private static final String SMALL = "() => [...document.querySelectorAll('a, button, input, label.big')]"
            + ".filter(e => !e.classList.contains('hidden-input') && e.getClientRects().length > 0)"
            + ".filter(e => e.getBoundingClientRect().height < 48)"
            + ".map(e => e.tagName + ' ' + e.textContent).join()";

    private WalkShop shop;

    @BeforeAll
    void open(@TempDir Path folder) {
        shop = WalkShop.open(folder, WalkShop.PLANTS, WalkShop.STOCK);
    }

    @AfterAll
    void close() {
        shop.close();
    }

    private static void isSound(Sight sight, String name) {
        sight.isSound(name);
        org.assertj.core.api.Assertions.assertThat(sight.page().evaluate(SMALL))
                .as("too small for a thumb: %s", name)
                .isEqualTo("");
    }

    @ParameterizedTest
    @EnumSource(Look.class)
    void everyStateIsForEveryone(Look look, Chromium chromium) {
        try (Sight sight = chromium.open(look, options -> options)) {
            var page = sight.page();
            sight.go(shop.at("/walk"));
            assertThat(page.getByText("Names and rows come with the first signal"))
                    .isVisible();
            assertThat(page.locator("#sign-in")).isVisible();
            isSound(sight, "walk, nobody signed in");

            shop.signIn(sight);
            page.reload();
            page.getByLabel("Or type or dictate its name").fill("lucothee");
            assertThat(page.locator("#results a").first()).containsText("Leucothoe");
            isSound(sight, "walk, a name as it sounds");
            page.getByLabel("Or type or dictate its name").fill("itea virginica");
            page.locator("#results a").first().click();
            isSound(sight, "walk, which row");
            page.getByText("#3 · B4-13 · 48").click();
            page.locator("button[aria-pressed]").first().click();
            isSound(sight, "walk, what is seen");
            page.getByText("Keep", new com.microsoft.playwright.Page.GetByTextOptions().setExact(true))
                    .click();
            assertThat(page.locator("#said")).containsText("Kept");
            assertThat(page.locator("#outbox")).hasText("Nothing waits");
            isSound(sight, "walk, next rows");
            page.locator("#outbox").click();
            isSound(sight, "walk, what is kept");
        }
    }
}
