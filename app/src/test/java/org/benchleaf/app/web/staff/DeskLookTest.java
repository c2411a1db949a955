package org.benchleaf.app.web.staff;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import java.util.Optional;
import org.benchleaf.app.Shop;
import org.benchleaf.app.browser.Chromium;
import org.benchleaf.app.browser.InChromium;
import org.benchleaf.app.browser.Look;
import org.benchleaf.app.browser.Sight;
import org.benchleaf.catalog.accounts.Actor;
import org.benchleaf.catalog.accounts.Role;
import org.benchleaf.catalog.lists.ListLine;
import org.benchleaf.catalog.lists.ListSite;
import org.benchleaf.catalog.lists.PlantList;
import org.benchleaf.shared.code.PlantKey;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/// The desk and the walk as staff sees them, signed in as they would, in a real browser.
@ExtendWith(InChromium.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DeskLookTest {
    private Shop shop;

    @BeforeAll
    void open(@TempDir Path folder) {
        shop = Shop.with(
                folder, "prices = hidden\ntiers = landscaper 1.15, retail 2.2\n", DeskShop.PLANTS, DeskShop.STOCK);
        add("Olive", Role.OWNER);
        add("Ann", Role.WALKER);
        shop.benchleaf()
                .accounts()
                .addCustomer(
                        "Moss and Sons",
                        Optional.of("landscaper"),
                        StaffClient.PASSWORD.toCharArray(),
                        new Actor("test", Actor.COMMAND_LINE));
        PlantKey itea = shop.benchleaf().plantFinder().find("Itea virginica").key();
        PlantKey corylopsis =
                shop.benchleaf().plantFinder().find("Corylopsis spicata").key();
        shop.benchleaf()
                .lists()
                .save(PlantList.empty("Mill Lane", ListSite.UNKNOWN)
                        .with(line -> new ListLine(line, itea, Optional.empty(), 80, "", "along the drive"))
                        .with(line -> new ListLine(line, corylopsis, Optional.empty(), 5, "", "")));
    }

    private void add(String name, Role role) {
        shop.benchleaf()
                .accounts()
                .add(name, role, StaffClient.PASSWORD.toCharArray(), new Actor("test", Actor.COMMAND_LINE));
    }

    @AfterAll
    void close() {
        shop.close();
    }

    private static void signIn(Page page, String name) {
        page.getByLabel("Name").fill(name);
        page.getByLabel("Password").fill(StaffClient.PASSWORD);
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Sign in"))
                .click();
    }

    @ParameterizedTest
    @EnumSource(Look.class)
    void everyPageIsSoundOnEveryScreen(Look look, Chromium chromium) {
        try (Sight sight = chromium.open(look, shop.at("/desk"))) {
            sight.isSound("sign in");
            signIn(sight.page(), "Olive");
            assertThat(sight.page()).hasURL(shop.at("/desk"));
            sight.isSound("desk");
            String key =
                    shop.benchleaf().plantFinder().find("Itea virginica").key().text();
            for (String path : new String[] {
                "/desk/plants",
                "/desk/plants?q=itea",
                "/desk/plants/" + key,
                "/desk/stock",
                "/desk/stock/lot?lot=L1",
                "/desk/call",
                "/desk/call?plant=Itea+virginica&size=%233",
                "/desk/lists",
                "/desk/lists/list?list=Mill+Lane",
                "/desk/print",
                "/desk/print/changed",
                "/desk/import",
                "/desk/shop",
                "/desk/rules",
                "/desk/backup",
                "/desk/health",
                "/desk/staff",
                "/desk/staff/log",
                "/staff/me",
                "/sightings",
                "/bulletin-desk",
                "/bulletin"
            }) {
                sight.go(shop.at(path)).isSound(path.substring(1));
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Look.class)
    void aCustomerSignsInFromTheListAndSeesTheirPrices(Look look, Chromium chromium) {
        try (Sight sight = chromium.open(look, shop.at("/available"))) {
            Page page = sight.page();
            sight.isSound("available to strangers");
            page.getByText("Customers sign in").click();
            signIn(page, "Moss and Sons");
            assertThat(page).hasURL(shop.at("/available"));
            // 18.50 x 1.15 = 21.275
            assertThat(page.getByText("$21.28")).isVisible();
            sight.isSound("available to a customer");
            page.getByText("Your account").click();
            sight.isSound("a customer's account");
        }
    }

    @Test
    void aSellerSignsInOnTheTelephoneAndWalks(Chromium chromium) {
        try (Sight sight = chromium.open(Look.PHONE_LIGHT, shop.at("/walk"))) {
            Page page = sight.page();
            // the shop's clock stands still; one that is ahead would be told as a conflict
            page.clock()
                    .setFixedTime(shop.benchleaf()
                            .now()
                            .atZone(shop.benchleaf().zone())
                            .toInstant()
                            .toEpochMilli());
            page.reload();
            page.getByText("Sign in to send").click();
            signIn(page, "Ann");
            assertThat(page).hasURL(shop.at("/walk"));
            page.getByLabel("Or type or dictate its name").fill("itea");
            page.locator("#results a").first().click();
            page.getByText("#3 · A1 · 60").click();
            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("full fall color"))
                    .click();
            page.getByRole(
                            AriaRole.BUTTON,
                            new Page.GetByRoleOptions().setName("Keep").setExact(true))
                    .click();
            assertThat(page.locator("#outbox")).hasText("Nothing waits");
            sight.isSound("walk, sent");
        }
    }
}
