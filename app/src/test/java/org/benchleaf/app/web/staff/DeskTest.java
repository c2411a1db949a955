package org.benchleaf.app.web.staff;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.benchleaf.catalog.accounts.Actor;
import org.benchleaf.catalog.accounts.Role;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/// What staff do at the desk, as a browser without script sends it.
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DeskTest {
    private static final String HOSTILE = "\"><script>alert(1)</script>";

    private DeskShop shop;
    private StaffClient editor;

    @BeforeAll
    void open(@TempDir Path folder) throws IOException {
        shop = new DeskShop(folder, "Test <nursery>");
        editor = shop.as(Role.EDITOR);
    }

    @AfterAll
    void close() {
        shop.close();
    }

    private static String field(String page, String name) {
        Matcher field =
                Pattern.compile("name=\"" + name + "\" value=\"([^\"]*)\"").matcher(page);
        assertThat(field.find()).as(name).isTrue();
        return field.group(1);
    }

    /// What the page says was not done.
    private static String alert(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).isEqualTo(422);
        Matcher alert = Pattern.compile("role=\"alert\">([^<]*)<").matcher(answer.body());
        assertThat(alert.find()).isTrue();
        return alert.group(1);
    }

    /// What a form of the page holds as the value that the person saw.
    private String before(String path, String attribute) throws IOException, InterruptedException {
        Matcher before = Pattern.compile("name=\"attribute\" value=\"" + attribute
                        + "\"><input type=\"hidden\" name=\"before\" value=\"([^\"]*)\"")
                .matcher(editor.page(path));
        assertThat(before.find()).as(attribute).isTrue();
        return before.group(1);
    }

    private String plant(String name) throws IOException, InterruptedException {
        Matcher path = Pattern.compile("class=\"hit\" href=\"(/desk/plants/[A-Z0-9]+)\"")
                .matcher(editor.page("/desk/plants?q=" + StaffClient.encoded(name)));
        assertThat(path.find()).isTrue();
        return path.group(1);
    }

    @Test
    void theDayBeginsWithWhatNeedsSomebody() throws IOException, InterruptedException {
        assertThat(editor.page("/desk"))
                .contains("Sizes with 10 or fewer free: 1")
                .contains("#3: 8 left")
                .contains("Lots nobody looked at for two weeks: 4")
                .contains("lot L1, A1; seen never")
                .contains("Test &lt;nursery&gt;")
                .doesNotContain("<script");
    }

    @Test
    void aPlantIsFoundByANameAsItSounds() throws IOException, InterruptedException {
        assertThat(editor.page("/desk/plants?q=korry+lopsis+spicata")).contains("Corylopsis spicata");
        assertThat(editor.page("/desk/plants?q=zzzzzzzz")).contains("Nothing has such a name");
    }

    @Test
    void aFactIsChangedWithItsSourceAndTheChangeIsTakenBack() throws IOException, InterruptedException {
        String path = plant("Fothergilla gardenii");
        HttpResponse<String> saved = editor.post(
                path,
                "attribute",
                "height",
                "before",
                before(path, "height"),
                "value",
                "3-4 ft",
                "source",
                "measured in our rows");
        assertThat(StaffClient.led(saved)).isEqualTo(path + "?done=changed#height");
        String page = editor.page(path + "?done=changed");
        assertThat(page.contains("<span>3–4 ft</span>")).isTrue();
        assertThat(page.contains("measured in our rows")).isTrue();
        assertThat(page.contains("Saved.")).isTrue();
        assertThat(shop.benchleaf.accounts().log(Long.MAX_VALUE, 1))
                .singleElement()
                .satisfies(line -> assertThat(line.act()).isEqualTo("fact.changed"));
        HttpResponse<String> undone = editor.post(path + "/undo", "import", field(page, "import"));
        assertThat(StaffClient.led(undone)).isEqualTo(path + "?done=undone");
        assertThat(editor.page(path).contains("<span>2–3 ft</span>")).isTrue();
        String after = editor.page(path);
        int history = after.indexOf("id=\"history\"");
        assertThat(after.substring(0, history).contains("measured in our rows")).isFalse();
        assertThat(after.substring(history)).contains("measured in our rows").contains("took a load back");
    }

    @Test
    void ofTwoWhoChangeOneFactAtOnceTheSecondIsTold() throws IOException, InterruptedException {
        String path = plant("Corylopsis spicata");
        String seen = before(path, "height");
        editor.post(path, "attribute", "height", "before", seen, "value", "7-10 ft", "source", "our rows");
        HttpResponse<String> second = shop.as(Role.OWNER)
                .post(path, "attribute", "height", "before", seen, "value", "5-6 ft", "source", "a guess");
        assertThat(alert(second))
                .contains("somebody changed this meanwhile")
                .contains(seen)
                .contains(before(path, "height"));
        assertThat(second.body().contains("value=\"5-6 ft\""))
                .as("typed once, not typed again")
                .isTrue();
        assertThat(editor.page(path).contains("5-6 ft")).isFalse();
    }

    @Test
    void aFactThatCannotBeIsRefusedInTheWordsOfAnImport() throws IOException, InterruptedException {
        String path = plant("Fothergilla gardenii");
        HttpResponse<String> refused = editor.post(
                path, "attribute", "height", "before", before(path, "height"), "value", "tall", "source", "our rows");
        assertThat(alert(refused)).contains("tall");
        assertThat(editor.page(path).contains("value=\"2-3 ft\"")).isTrue();
    }

    @Test
    void whatTheEarlierSourceStatesStandsBesideTheNewFact() throws IOException, InterruptedException {
        String path = plant("Itea virginica");
        editor.post(
                path, "attribute", "height", "before", before(path, "height"), "value", "4-5 ft", "source", "our rows");
        assertThat(others(path)).isEqualTo("3–5 ft");
    }

    @Test
    void anotherSourceIsTakenByOnePressAndTheHistoryTellsIt() throws IOException, InterruptedException {
        String path = plant("Corylopsis spicata");
        editor.post(
                path, "attribute", "spread", "before", before(path, "spread"), "value", "5-6 ft", "source", "a book");
        editor.post(
                path, "attribute", "spread", "before", before(path, "spread"), "value", "6-8 ft", "source", "our rows");
        String page = editor.page(path);
        Matcher form = Pattern.compile("name=\"value\" value=\"5-6 ft\"><input type=\"hidden\" name=\"source\""
                        + " value=\"([^\"]*)\"><button")
                .matcher(page);
        assertThat(form.find()).isTrue();
        assertThat(form.group(1)).isEqualTo("a book; chosen by Test &lt;nursery&gt;");
        HttpResponse<String> taken = editor.post(
                path,
                "attribute",
                "spread",
                "before",
                before(path, "spread"),
                "value",
                "5-6 ft",
                "source",
                "a book; chosen by Test <nursery>");
        assertThat(StaffClient.led(taken)).isEqualTo(path + "?done=changed#spread");
        page = editor.page(path);
        assertThat(page).contains("<span>5–6 ft</span>");
        assertThat(page.substring(page.indexOf("id=\"history\"")))
                .containsSubsequence(
                        "spread: 6–8 ft → 5-6 ft (a book; chosen by Test &lt;nursery&gt;)",
                        "The editor",
                        "spread: 5–6 ft → 6-8 ft (our rows)");
    }

    private String others(String path) throws IOException, InterruptedException {
        Matcher other = Pattern.compile("Another source: ([^<]*?) <").matcher(editor.page(path));
        assertThat(other.find()).isTrue();
        return other.group(1);
    }

    @Test
    void anEntryCountsOnceHoweverOftenItsFormIsSent() throws IOException, InterruptedException {
        StaffClient walker = shop.as(Role.WALKER);
        String page = walker.page("/desk/stock/lot?lot=L4");
        String key = field(page, "key");
        for (int time = 0; time < 2; time++) {
            HttpResponse<String> held = walker.post(
                    "/desk/stock/lot",
                    "lot",
                    "L4",
                    "kind",
                    "held",
                    "number",
                    "20",
                    "why",
                    "Green Acres",
                    "until",
                    "2026-12-01",
                    "key",
                    key);
            assertThat(StaffClient.led(held)).isEqualTo("/desk/stock/lot?lot=L4&done=entered");
        }
        assertThat(walker.page("/desk/stock/lot?lot=L4"))
                .contains("<dt>Free</dt><dd>40</dd>")
                .contains("<dt>Held</dt><dd>20</dd>")
                .contains("Green Acres")
                .contains("The walker");
    }

    @Test
    void anEntryThatCannotBeIsRefusedAndNotTypedAgain() throws IOException, InterruptedException {
        HttpResponse<String> refused = editor.post(
                "/desk/stock/lot", "lot", "L2", "kind", "shipped", "number", "9", "why", "order 114", "key", "k1");
        assertThat(alert(refused)).contains("9");
        assertThat(refused.body().contains("value=\"order 114\"")).isTrue();
        assertThat(refused.body().contains("value=\"k1\"")).isTrue();
        assertThat(alert(editor.post("/desk/stock/lot", "lot", "L2", "kind", "lost", "number", "some", "key", "k2")))
                .contains("&quot;some&quot; is no number of plants");
        assertThat(editor.page("/desk/stock/lot?lot=L2")).contains("<dt>Free</dt><dd>8</dd>");
    }

    @Test
    void aCallerHearsWhatDoesTheSameWork() throws IOException, InterruptedException {
        assertThat(editor.page("/desk/call?q=" + StaffClient.encoded("Henry's Garnet") + "&quantity=40&size=%233"))
                .contains("Instead of Itea virginica")
                .contains("Fothergilla gardenii")
                .contains("55 by then");
        assertThat(editor.get("/desk/call?q=itea&size=huge").statusCode()).isEqualTo(422);
    }

    @Test
    void whatTheShopSaysToOfferInsteadIsToldAsSoonAsItIsTaken() throws IOException, InterruptedException {
        String call = "/desk/call?q=" + StaffClient.encoded("Henry's Garnet");
        assertThat(editor.page(call)).doesNotContain("The county office");
        Path table = shop.folder.resolve("instead.csv");
        try {
            Files.writeString(
                    table, "original,instead,publisher\nItea virginica,Corylopsis spicata,The county office\n");
            assertThat(editor.page(call)).contains("Named in its place by The county office");
        } finally {
            Files.delete(table);
        }
        assertThat(editor.page(call)).doesNotContain("The county office");
    }

    @Test
    void aSpreadsheetIsShownThenLoadedThenTakenBack() throws IOException, InterruptedException {
        byte[] list = "lot,name,size,count\nN1,Corylopsis spicata,#3,12\n".getBytes(StandardCharsets.UTF_8);
        HttpResponse<String> preview = editor.upload("/desk/import", "file", "new.csv", list);
        assertThat(preview.statusCode()).as(preview.body()).isEqualTo(200);
        assertThat(preview.body()).contains("Corylopsis spicata").contains("N1");
        assertThat(shop.benchleaf.ledger().lot("N1")).isEmpty();
        String id = field(preview.body(), "id");
        assertThat(shop.as(Role.OWNER).post("/desk/import/apply", "id", id).statusCode())
                .as("only who saw it says yes")
                .isEqualTo(422);
        assertThat(StaffClient.led(editor.post("/desk/import/apply", "id", id)))
                .isEqualTo("/desk/import?done=imported");
        assertThat(shop.benchleaf.ledger().lot("N1")).isPresent();
        assertThat(alert(editor.post("/desk/import/apply", "id", id))).contains("this preview is gone");
        String page = editor.page("/desk/import");
        assertThat(page).contains("new.csv, loaded");
        assertThat(StaffClient.led(editor.post("/desk/import/undo", "import", field(page, "import"))))
                .isEqualTo("/desk/import?done=undone");
        assertThat(editor.page("/desk/stock?q=Corylopsis+spicata")).doesNotContain("N1");
    }

    @Test
    void aPreviewWhoseGroundMovedIsRefused() throws IOException, InterruptedException {
        byte[] list = "name,spread,source\nFothergilla gardenii,2-3 ft,a book\n".getBytes(StandardCharsets.UTF_8);
        String id =
                field(editor.upload("/desk/import", "file", "book.csv", list).body(), "id");
        String path = plant("Fothergilla gardenii");
        editor.post(
                path, "attribute", "spread", "before", before(path, "spread"), "value", "1-2 ft", "source", "our rows");
        HttpResponse<String> late = editor.post("/desk/import/apply", "id", id);
        assertThat(alert(late)).isNotBlank();
        assertThat(editor.page(path).contains("a book")).isFalse();
    }

    @Test
    void rowsThatCannotBeLoadedAreLeftOutOnlyWhenSomebodySaysSo() throws IOException, InterruptedException {
        byte[] list = "lot,name,size,count\nN1,Corylopsis spicata,#3,12\nN2,Corylopsis spicata,huge,3\n"
                .getBytes(StandardCharsets.UTF_8);
        String preview = editor.upload("/desk/import", "file", "new.csv", list).body();
        assertThat(preview).contains("Some rows cannot be loaded").contains("huge");
        assertThat(alert(editor.post("/desk/import/apply", "id", field(preview, "id"))))
                .contains("nobody said to leave them out");
        assertThat(shop.benchleaf.ledger().lot("N1")).isEmpty();
    }

    @Test
    void aFileIsNeverWrittenWhereItsNameSays() throws IOException, InterruptedException {
        byte[] list = "lot,name,size,count\nN1,Corylopsis spicata,#3,12\n".getBytes(StandardCharsets.UTF_8);
        for (String name : new String[] {"../../escaped.csv", "..\\..\\escaped.csv", "/tmp/escaped.csv"}) {
            editor.upload("/desk/import", "file", name, list);
        }
        assertThat(alert(editor.upload("/desk/import", "file", "run.sh", list)))
                .contains("is no spreadsheet by its name");
        assertThat(editor.upload("/desk/import", "file", "a.csv", list, "map", "../settings")
                        .statusCode())
                .isEqualTo(422);
        try (Stream<Path> files = Files.walk(shop.folder.getParent())) {
            assertThat(files.filter(file -> file.getFileName().toString().contains("escaped")))
                    .isEmpty();
        }
        assertThat(Files.list(shop.folder.resolve("incoming"))).isEmpty();
    }

    @Test
    void aFileThatIsTooLongIsTurnedAway() throws IOException, InterruptedException {
        HttpResponse<String> answer =
                editor.upload("/desk/import", "file", "long.csv", new byte[(int) ImportPages.LARGEST + 1]);

        assertThat(answer.statusCode()).isEqualTo(413);
        assertThat(editor.get("/desk/import").statusCode()).isEqualTo(200);
    }

    @Test
    void markupInAnyFieldIsShownAndNeverRuns() throws IOException, InterruptedException {
        String path = plant("Fothergilla gardenii");
        editor.post(
                path,
                "attribute",
                "selling_note",
                "before",
                before(path, "selling_note"),
                "value",
                HOSTILE,
                "source",
                HOSTILE);
        editor.post("/desk/stock/lot", "lot", "L1", "kind", "held", "number", "1", "why", HOSTILE, "key", HOSTILE);
        shop.benchleaf.accounts().makeToken("The editor", HOSTILE, Duration.ofDays(1), new Actor(HOSTILE, HOSTILE));
        StaffClient owner = shop.as(Role.OWNER);
        String asked = StaffClient.encoded(HOSTILE);
        for (String page : new String[] {
            path,
            "/desk/stock/lot?lot=L1",
            "/desk/plants?q=" + asked,
            "/desk/stock?q=" + asked,
            "/desk/call?q=" + asked + "&size=" + asked + "&quantity=" + asked + "&for=" + asked + "&by=" + asked,
            "/desk?done=" + asked,
            "/desk/staff/log",
            "/desk/staff/log?before=" + asked,
            "/staff/sign-in?next=" + asked
        }) {
            assertThat(owner.get(page).body().contains("<script>")).as(page).isFalse();
        }
        assertThat(editor.page("/staff/me").contains("<script>")).isFalse();
        assertThat(editor.page("/staff/me").contains("&lt;script&gt;")).isTrue();
        assertThat(editor.page(path).contains("&lt;script&gt;")).isTrue();
        assertThat(owner.post("/desk/staff", "name", HOSTILE, "role", HOSTILE, "password", HOSTILE)
                        .body())
                .doesNotContain("<script>");
    }

    @Test
    void aTokenIsShownOnceAndANewPasswordNeedsTheOldOne() throws IOException, InterruptedException {
        StaffClient printer = shop.as(Role.PRINTER);
        String made = printer.post("/staff/me/token", "label", "till").body();
        assertThat(made).containsPattern("benchleaf_[A-Za-z0-9_-]{43}");
        assertThat(printer.page("/staff/me")).contains("till").doesNotContainPattern("benchleaf_[A-Za-z0-9_-]{43}");
        HttpResponse<String> wrong = printer.post(
                "/staff/me/password",
                "old",
                "not it",
                "new",
                "five wet shoots in a pot",
                "again",
                "five wet shoots in a pot");
        assertThat(alert(wrong)).contains("nothing was changed");
        HttpResponse<String> set = printer.post(
                "/staff/me/password",
                "old",
                StaffClient.PASSWORD,
                "new",
                "five wet shoots in a pot",
                "again",
                "five wet shoots in a pot");
        assertThat(StaffClient.led(set)).isEqualTo("/staff/sign-in");
        assertThat(StaffClient.led(printer.get("/desk"))).startsWith("/staff/sign-in");
    }

    @Test
    void anOwnerLetsPeopleInAndReadsTheLog() throws IOException, InterruptedException {
        StaffClient owner = shop.as(Role.OWNER);
        assertThat(StaffClient.led(owner.post(
                        "/desk/staff", "name", "Wren", "role", "walker", "password", "five wet shoots in a pot")))
                .isEqualTo("/desk/staff?done=staff-added");
        assertThat(StaffClient.led(owner.post("/desk/staff/role", "name", "Wren", "role", "left")))
                .isEqualTo("/desk/staff?done=staff-changed");
        assertThat(alert(owner.post("/desk/staff/role", "name", "The owner", "role", "left")))
                .contains("is the only owner");
        assertThat(owner.page("/desk/staff/log")).contains("let somebody in").contains("Wren: walker");
    }
}
