package org.benchleaf.app.web.staff;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FilePayload;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.app.Shop;
import org.benchleaf.app.browser.Chromium;
import org.benchleaf.app.browser.InChromium;
import org.benchleaf.app.browser.Look;
import org.benchleaf.app.browser.Sight;
import org.benchleaf.app.service.PressOrder;
import org.benchleaf.app.service.PrintOrder;
import org.benchleaf.app.service.Wanted;
import org.benchleaf.catalog.accounts.Actor;
import org.benchleaf.catalog.accounts.Role;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.render.CardFormat;
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
    void open(@TempDir Path folder) throws IOException, InterruptedException {
        shop = Shop.demo(folder);
        shop.benchleaf()
                .accounts()
                .add("Pip", Role.PRINTER, StaffClient.PASSWORD.toCharArray(), new Actor("test", Actor.COMMAND_LINE));
        worked();
    }

    /// Somebody who worked here before: a fact changed twice, a card printed and its price changed since.
    private void worked() throws IOException, InterruptedException {
        StaffClient owner =
                StaffClient.of(shop.benchleaf(), URI.create(shop.at("/")).getPort(), "Olive", Role.OWNER);
        PlantRecord itea = shop.benchleaf().plantFinder().find("Itea virginica 'Henry's Garnet'");
        for (String height : new String[] {"3-4 ft", "4-5 ft"}) {
            Matcher before = Pattern.compile(
                            "name=\"attribute\" value=\"height\"><input type=\"hidden\" name=\"before\""
                                    + " value=\"([^\"]*)\"")
                    .matcher(owner.page("/desk/plants/" + itea.key()));
            assertTrue(before.find());
            owner.post(
                    "/desk/plants/" + itea.key(),
                    "attribute",
                    "height",
                    "before",
                    before.group(1),
                    "value",
                    height,
                    "source",
                    "measured in our rows, " + height);
        }
        shop.benchleaf()
                .printing()
                .cards()
                .print(
                        List.of(new Wanted(itea, Optional.empty(), Optional.of(12))),
                        true,
                        CardFormat.LARGE,
                        PrintOrder.GIVEN,
                        PressOrder.USUAL,
                        shop.folder().resolve("cards.pdf"));
        owner.post(
                "/desk/plants/" + itea.key(),
                "attribute",
                "selling_note",
                "before",
                itea.facts().fact(Attributes.SELLING_NOTE).map(Fact::text).orElse(""),
                "value",
                "Red until Thanksgiving",
                "source",
                "our rows");
    }

    @ParameterizedTest
    @EnumSource(Look.class)
    void pagesWithMuchOnThemAreSoundToo(Look look, Chromium chromium) {
        PlantRecord itea = shop.benchleaf().plantFinder().find("Itea virginica 'Henry's Garnet'");
        try (Sight sight = chromium.open(look, shop.at("/desk"))) {
            Page page = sight.page();
            page.getByLabel("Name").fill("Olive");
            page.getByLabel("Password").fill(StaffClient.PASSWORD);
            button(page, "Sign in").click();
            assertThat(page).hasURL(shop.at("/desk"));
            sight.isSound("desk, busy");
            sight.go(shop.at("/desk/plants/" + itea.key())).isSound("plant, edited");
            sight.go(shop.at("/desk/print/changed")).isSound("changed since printed");
            assertThat(page.getByText("Bench cards, large")).isVisible();
            sight.go(shop.at("/desk/rules?plant=Berberis+thunbergii&to=PA")).isSound("sale rules, asked");
            sight.go(shop.at("/desk/import"));
            page.getByLabel("Spreadsheet")
                    .setInputFiles(new FilePayload(
                            "from elsewhere.csv",
                            "text/csv",
                            "Botanical,Pot,Qty,Each,Remarks\nItea virginica,#3,12,18.50,full\nAcer rubrum,#5,3,,\n"
                                    .getBytes(StandardCharsets.UTF_8)));
            button(page, "Look at its columns first").click();
            assertThat(page.getByText("What the columns mean")).isVisible();
            sight.isSound("import, columns");
        }
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
