package org.benchleaf.app.web.walk;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.benchleaf.app.browser.Chromium;
import org.benchleaf.app.browser.InChromium;
import org.benchleaf.app.browser.Look;
import org.benchleaf.app.browser.Sight;
import org.benchleaf.catalog.ledger.LedgerEntry;
import org.benchleaf.catalog.ledger.LedgerLine;
import org.benchleaf.catalog.ledger.StockEvent;
import org.benchleaf.catalog.walk.NotedSighting;
import org.benchleaf.shared.stock.Condition;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/// The crop walk on a telephone of 360 px, where there is no signal.
@ExtendWith(InChromium.class)
class WalkInTheFieldTest {
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

    /// In the office, with signal: opened once, so that the telephone has what it needs.
    private Sight readied(Chromium chromium) {
        Sight sight = chromium.open(Look.PHONE_LIGHT, options -> options);
        shop.signIn(sight);
        Page page = sight.go(shop.at("/walk")).page();
        page.waitForFunction("async () => (await navigator.serviceWorker.ready).active?.state === 'activated'");
        page.getByLabel("Or type or dictate its name").fill("itea");
        assertThat(page.locator("#results a").first()).containsText("Itea");
        return sight;
    }

    private static void open(Page page, String name, String row) {
        page.getByLabel("Or type or dictate its name").fill(name);
        page.locator("#results a").first().click();
        page.getByText(row).click();
    }

    private static void tap(Page page, String condition) {
        page.getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(condition).setExact(true))
                .click();
    }

    private static void keep(Page page) {
        tap(page, "Keep");
        assertThat(page.locator("#said")).containsText("Kept");
    }

    private List<NotedSighting> seen() {
        return shop.benchleaf().walks().seenSince(Instant.EPOCH, 99);
    }

    @Test
    void whatIsSeenWithoutSignalIsKeptThroughAReloadAndSentOnceTheSignalIsBack(Chromium chromium) {
        try (Sight sight = readied(chromium)) {
            Page page = sight.page();
            sight.context().setOffline(true);
            page.reload();
            open(page, "moon beam", "#1 · B4-12 · 120");
            tap(page, "in bloom");
            page.getByLabel("How many?").fill("96");
            page.getByLabel("How tall, in inches?").fill("20");
            page.getByLabel("One line").fill("best row");
            keep(page);
            assertThat(page.locator("#outbox")).hasText("1 waiting for signal");
            page.reload();
            assertThat(page.locator("#outbox")).hasText("1 waiting for signal");
            assertThat(seen()).isEmpty();

            sight.context().setOffline(false);

            assertThat(page.locator("#outbox")).hasText("Nothing waits");
            assertThat(seen()).singleElement().satisfies(noted -> {
                assertThat(noted.sighting().lot()).contains("S0002");
                assertThat(noted.sighting().conditions()).containsExactly(Condition.IN_BLOOM);
                assertThat(noted.sighting().heightCm()).contains(51); // 20 in = 50.8 cm, NIST SP 811, app. B.8
                assertThat(noted.sighting().remark()).isEqualTo("best row");
                assertThat(noted.sighting().who()).isEqualTo("Ann");
            });
            assertThat(shop.count("S0002")).isEqualTo(96);
        }
    }

    @Test
    void theServerMayBeGoneAndComeBackMeanwhile(Chromium chromium) {
        try (Sight sight = readied(chromium)) {
            Page page = sight.page();
            shop.stopServer();
            page.reload();
            open(page, "lucothee rain bow", "#3 · B4-11 · 60");
            tap(page, "winter hue");
            keep(page);
            assertThat(page.locator("#outbox")).hasText("1 waiting for signal");

            shop.startServer();
            page.locator("#outbox").click();
            tap(page, "Send now");

            assertThat(page.locator("#outbox")).hasText("Nothing waits");
            assertThat(seen()).hasSize(1);
        }
    }

    @Test
    void anAnswerThatIsLostIsAskedForAgainAndNothingIsCountedTwice(Chromium chromium) {
        try (Sight sight = readied(chromium)) {
            Page page = sight.page();
            // the server writes it down, and the answer does not come through
            page.route("**/walk/sightings", route -> {
                route.fetch();
                route.abort();
            });
            open(page, "lucothee rain bow", "#3 · B4-11 · 60");
            page.getByLabel("How many?").fill("55");
            keep(page);
            assertThat(page.locator("#outbox")).hasText("1 waiting for signal");
            assertThat(shop.count("S0001")).isEqualTo(55);

            page.unroute("**/walk/sightings");
            page.reload();

            assertThat(page.locator("#outbox")).hasText("Nothing waits");
            assertThat(shop.benchleaf().ledger().history("S0001", 9))
                    .filteredOn(line -> line.who().equals("Ann"))
                    .extracting(LedgerLine::count)
                    .containsExactly(55);
        }
    }

    @Test
    void aConflictIsShownAndSettledOnTheTelephone(Chromium chromium) {
        try (Sight sight = readied(chromium)) {
            Page page = sight.page();
            sight.context().setOffline(true);
            open(page, "sweetspire", "#3 · B4-13 · 48");
            page.getByLabel("How many?").fill("40");
            keep(page);
            shop.benchleaf()
                    .ledger()
                    .record(new LedgerEntry(
                            "S0003",
                            new StockEvent.Counted(44),
                            "Bob",
                            "recount",
                            "recount-1",
                            Optional.of(Instant.now().plusSeconds(1))));

            sight.context().setOffline(false);
            assertThat(page.locator("#outbox")).hasText("1 to look at");
            page.locator("#outbox").click();
            assertThat(page.locator(".kept").first())
                    .containsText("40 were counted in lot S0003, and Bob counted 44 later");
            assertThat(shop.count("S0003")).isEqualTo(44);
            sight.isSound("walk, a conflict");

            tap(page, "It is as I saw it");

            assertThat(page.locator("#outbox")).hasText("Nothing waits");
            assertThat(shop.count("S0003")).isEqualTo(40);
        }
    }

    @Test
    void aRowIsSeenAndKeptByTheKeyboardAlone(Chromium chromium) {
        try (Sight sight = readied(chromium)) {
            Page page = sight.page();
            sight.tabTo("#results a");
            sight.press("Enter");
            sight.tabTo(".choices a");
            sight.press("Enter");
            sight.tabTo("button[aria-pressed]");
            sight.press("Space");
            sight.tabTo(".keep");
            sight.press("Enter");

            assertThat(page.locator("#said")).containsText("Kept");
            assertThat(page.locator("#outbox")).hasText("Nothing waits");
            assertThat(seen()).hasSize(1);
        }
    }
}
