package org.benchleaf.app.web.staff;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.benchleaf.app.Shop;
import org.benchleaf.app.browser.Chromium;
import org.benchleaf.app.browser.InChromium;
import org.benchleaf.app.browser.Look;
import org.benchleaf.app.browser.Sight;
import org.benchleaf.catalog.accounts.Actor;
import org.benchleaf.catalog.accounts.Role;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/// A working day of an editor whose mouse is broken.
@ExtendWith(InChromium.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DeskKeyboardTest {
    private Shop shop;

    @BeforeAll
    void open(@TempDir Path folder) {
        shop = Shop.with(folder, "", DeskShop.PLANTS, DeskShop.STOCK);
        shop.benchleaf()
                .accounts()
                .add("Eve", Role.EDITOR, StaffClient.PASSWORD.toCharArray(), new Actor("test", Actor.COMMAND_LINE));
    }

    @AfterAll
    void close() {
        shop.close();
    }

    private static void type(Sight sight, String field, String text) {
        sight.tabTo(field);
        sight.press("Control+A");
        sight.page().keyboard().type(text);
    }

    /// Presses Enter and waits for the page that it leads to.
    private static void enter(Sight sight) {
        Page page = sight.page();
        // the answer may have come while the page that asked still stands: the mark tells one from the other
        page.evaluate("() => { document.documentElement.dataset.asked = 'yes'; }");
        sight.press("Enter");
        page.waitForFunction("() => !document.documentElement.dataset.asked && document.readyState === 'complete'");
    }

    @Test
    void everyMainTaskIsDoneByKeyboardAlone(Chromium chromium) {
        try (Sight sight = chromium.open(Look.DESK_LIGHT, shop.at("/desk"))) {
            Page page = sight.page();
            type(sight, "#name", "Eve");
            type(sight, "#password", StaffClient.PASSWORD);
            enter(sight);
            assertThat(page).hasURL(shop.at("/desk"));
            findsAPlantAndChangesAFact(sight);
            countsALot(sight);
            answersACall(sight);
            beginsAListAndFillsIt(sight);
            printsACard(sight);
            sight.tabTo(".desk-me button");
            enter(sight);
            assertThat(page.getByLabel("Password")).isVisible();
        }
    }

    private static void findsAPlantAndChangesAFact(Sight sight) {
        Page page = sight.page();
        type(sight, "#q", "Fothergilla gardenii");
        enter(sight);
        sight.tabTo("a.hit");
        enter(sight);
        sight.tabTo("#height summary");
        sight.press("Enter");
        type(sight, "#v-height", "3-4 ft");
        enter(sight);
        assertThat(page.locator("[role=status]")).containsText("Saved");
        assertThat(page.locator("#height dd > span").first()).hasText("3–4 ft");
    }

    private void countsALot(Sight sight) {
        sight.tabTo("a[href='/desk/stock']");
        enter(sight);
        type(sight, "#q", "L1");
        enter(sight);
        type(sight, "#number", "55");
        type(sight, "#why", "counted again");
        enter(sight);
        assertThat(sight.page().getByText("Written into the ledger.")).isVisible();
        assertThat(shop.benchleaf().ledger().lot("L1").orElseThrow().count()).isEqualTo(55);
    }

    private static void answersACall(Sight sight) {
        sight.tabTo("a[href='/desk/call']");
        enter(sight);
        type(sight, "#q", "Itea virginica");
        type(sight, "#quantity", "40");
        enter(sight);
        assertThat(sight.page().locator("article.offer").first()).isVisible();
    }

    private void beginsAListAndFillsIt(Sight sight) {
        sight.tabTo("a[href='/desk/lists']");
        enter(sight);
        type(sight, "#name", "Hillside");
        enter(sight);
        type(sight, "#plant", "Corylopsis spicata");
        type(sight, "#quantity", "12");
        enter(sight);
        assertThat(sight.page().getByText("Put on the list.")).isVisible();
        assertThat(shop.benchleaf().lists().find("Hillside").orElseThrow().lines())
                .singleElement()
                .satisfies(line -> assertThat(line.quantity()).isEqualTo(12));
    }

    private void printsACard(Sight sight) {
        Page page = sight.page();
        sight.tabTo("a[href='/desk/print']");
        enter(sight);
        type(sight, "#name", "Corylopsis spicata");
        enter(sight);
        assertThat(page.locator(".picks li")).hasCount(1);
        sight.tabTo("button[name=make]");
        enter(sight);
        assertThat(page.getByText("Download the PDF")).isVisible();
        assertThat(page).hasURL(Pattern.compile("/desk/print/job/"));
        sight.tabTo("a.button");
        assertThat(shop.benchleaf().prints().last(1))
                .singleElement()
                .satisfies(printed -> assertThat(printed.who()).isEqualTo("Eve"));
    }
}
