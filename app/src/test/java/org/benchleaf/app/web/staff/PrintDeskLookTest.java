package org.benchleaf.app.web.staff;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import org.benchleaf.app.Shop;
import org.benchleaf.app.browser.Chromium;
import org.benchleaf.app.browser.InChromium;
import org.benchleaf.app.browser.Look;
import org.benchleaf.app.browser.Sight;
import org.benchleaf.catalog.accounts.Actor;
import org.benchleaf.catalog.accounts.Role;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/// The print desk in a real browser, from the first name to the finished file.
@ExtendWith(InChromium.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PrintDeskLookTest {
    private Shop shop;

    @BeforeAll
    void open(@TempDir Path folder) {
        shop = Shop.demo(folder);
        shop.benchleaf()
                .accounts()
                .add("Pip", Role.PRINTER, StaffClient.PASSWORD.toCharArray(), new Actor("test", Actor.COMMAND_LINE));
    }

    @AfterAll
    void close() {
        shop.close();
    }

    private static Locator button(Page page, String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    @ParameterizedTest
    @EnumSource(Look.class)
    void fromANameToTheFile(Look look, Chromium chromium) {
        try (Sight sight = chromium.open(look, shop.at("/desk/print"))) {
            Page page = sight.page();
            page.getByLabel("Name").fill("Pip");
            page.getByLabel("Password").fill(StaffClient.PASSWORD);
            button(page, "Sign in").click();
            sight.go(shop.at("/desk/print")).isSound("print desk, empty");
            page.getByLabel("A plant, by key").fill("hydrangea quercifolia alice");
            page.keyboard().press("Enter");
            assertThat(page.locator(".picks li")).hasCount(1);
            page.getByText("More at once").click();
            page.getByLabel("All that meet a need").fill("fall color, part shade, under 4 ft, in stock");
            button(page, "Add").last().click();
            assertThat(page.getByAltText("The first sheet as it will be printed"))
                    .isVisible();
            sight.isSound("print desk, cards");
            page.getByLabel("Labels").check();
            button(page, "Look it over").click();
            page.getByText("cell 1 is used", new Page.GetByTextOptions().setExact(true))
                    .locator("..")
                    .click();
            page.getByText("cell 2 is used", new Page.GetByTextOptions().setExact(true))
                    .locator("..")
                    .click();
            button(page, "Look it over").click();
            assertThat(page.locator(".cell input:checked")).hasCount(2);
            sight.isSound("print desk, labels");
            button(page, "Make the PDF").click();
            assertThat(page.getByText("Download the PDF")).isVisible();
            sight.isSound("print desk, done");
        }
    }
}
