package org.benchleaf.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
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
import org.junit.jupiter.params.provider.EnumSource;

/// The public pages as shoppers and landscapers see them, in a real browser.
@ExtendWith(InChromium.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PublicPagesLookTest {
    private static final String NEED = "/find?q=fall+color%2C+zone+6%2C+shade%2C+under+5+ft%2C+40+in+%233";

    private Shop shop;

    @BeforeAll
    void open(@TempDir Path folder) {
        shop = Shop.demo(folder);
    }

    @AfterAll
    void close() {
        shop.close();
    }

    @ParameterizedTest
    @EnumSource(Look.class)
    void everyPageIsSoundOnEveryScreen(Look look, Chromium chromium) {
        try (Sight sight = chromium.open(look, shop.at("/"))) {
            sight.isSound("front");
            sight.go(shop.at("/find")).isSound("find, empty");
            sight.go(shop.at(NEED)).isSound("find, answered");
            sight.go(shop.at("/find?q=korry+lopsis")).isSound("find, a name");
            sight.go(shop.at("/find?q=zone+3%2C+palm&plant=Itea+virginica")).isSound("find, why not");
            sight.go(shop.at(shop.plant("Itea virginica 'Henry''s Garnet'".replace("''", "'"))))
                    .isSound("plant");
            sight.go(shop.at("/p/none")).isSound("not found");
        }
    }

    @ParameterizedTest
    @EnumSource(names = {"PHONE_LIGHT", "DESK_LIGHT"})
    void aNeedIsAskedAnsweredAndNarrowedByTheKeyboardAlone(Look look, Chromium chromium) {
        try (Sight sight = chromium.open(look, shop.at("/find"))) {
            sight.tabTo("#q");
            sight.page().keyboard().type("fall color, zone 6, part shade, under 5 ft");
            sight.press("Enter");
            sight.page().waitForSelector(".found");
            String first = sight.page().locator(".found-name a").first().innerText();
            sight.tabTo(".wish-off");
            sight.press("Enter");
            sight.page().waitForURL(url -> !url.contains("fall"));
            sight.tabTo(".found-name a");
            sight.press("Enter");
            sight.page().waitForSelector(".page-name");
            assertThat(first).isNotBlank();
            assertThat(sight.page().getByRole(AriaRole.HEADING, new Page.GetByRoleOptions().setLevel(1)).count())
                    .isEqualTo(1);
        }
    }

    @Test
    void pagesWorkWithoutScript(Chromium chromium) {
        try (Sight sight = chromium.open(Look.PHONE_LIGHT, options -> options.setJavaScriptEnabled(false))) {
            sight.go(shop.at("/find"));
            sight.page().getByRole(AriaRole.SEARCHBOX).fill("evergreen screen zone 5");
            sight.page().getByRole(AriaRole.BUTTON).first().click();
            assertThat(sight.page().locator(".found").count()).isPositive();
        }
    }
}
