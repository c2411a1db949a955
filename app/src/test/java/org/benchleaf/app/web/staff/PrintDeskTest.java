package org.benchleaf.app.web.staff;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.benchleaf.app.service.LoadProgress;
import org.benchleaf.catalog.accounts.Role;
import org.benchleaf.catalog.prints.PrintedEntry;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/// The print desk as a browser without script uses it.
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PrintDeskTest {
    private DeskShop shop;
    private StaffClient printer;

    @BeforeAll
    void open(@TempDir Path folder) throws IOException {
        shop = new DeskShop(folder, "Test nursery");
        printer = shop.as(Role.PRINTER);
    }

    @AfterAll
    void close() {
        shop.close();
    }

    private String key(String name) {
        return shop.benchleaf.plantFinder().find(name).key().text();
    }

    private static long lines(HttpResponse<String> page) {
        return Pattern.compile("<select name=\"line\"")
                .matcher(page.body())
                .results()
                .count();
    }

    private static HttpResponse<String> shown(HttpResponse<String> page) {
        assertThat(page.statusCode())
                .as(page.body().replaceAll("(?s)<style>.*?</style>", ""))
                .isEqualTo(200);
        return page;
    }

    /// What the page says was not done.
    private static String alert(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).isEqualTo(422);
        Matcher alert = Pattern.compile("role=\"alert\">([^<]*)<").matcher(answer.body());
        assertThat(alert.find()).isTrue();
        return alert.group(1);
    }

    /// Waits for a job and downloads what came of it.
    private byte[] printed(HttpResponse<String> made) throws IOException, InterruptedException {
        String path = StaffClient.led(made);
        Instant end = Instant.now().plus(Duration.ofMinutes(5));
        HttpResponse<String> job = printer.get(path);
        while (job.headers().firstValue("Refresh").isPresent() && Instant.now().isBefore(end)) {
            Thread.sleep(100);
            job = printer.get(path);
        }
        assertThat(job.body()).contains("Download the PDF");
        return printer.bytes(path + "/file");
    }

    private static String text(byte[] pdf) throws IOException {
        try (var document = Loader.loadPDF(pdf)) {
            return document.getNumberOfPages() + " " + new PDFTextStripper().getText(document);
        }
    }

    @Test
    void aNameAsItSoundsIsPutOnTheListAndItsCardIsSeenBeforeItIsPrinted() throws IOException, InterruptedException {
        HttpResponse<String> page =
                shown(printer.post("/desk/print", "name", "fothergila gardeny", "add", "yes", "doc", "card"));
        assertThat(page.body()).contains("Fothergilla gardenii");
        assertThat(lines(page)).isEqualTo(1);
        Matcher picture =
                Pattern.compile("src=\"data:image/png;base64,([^\"]+)\"").matcher(page.body());
        assertThat(picture.find()).isTrue();
        var seen = ImageIO.read(new ByteArrayInputStream(Base64.getDecoder().decode(picture.group(1))));
        // a large card is 5½ × 7 in
        assertThat((double) seen.getHeight() / seen.getWidth()).isBetween(7 / 5.5 - 0.01, 7 / 5.5 + 0.01);
        assertThat(page.body()).contains("Nothing to be put right.");
    }

    @Test
    void whatMeetsANeedWhatIsHereAndWhatWasPastedComeOnOneList() throws IOException, InterruptedException {
        HttpResponse<String> page = shown(printer.post("/desk/print", "need", "fall color, part shade", "add", "yes"));
        assertThat(lines(page)).isEqualTo(4);
        page = shown(printer.post("/desk/print", "kind", "any", "place", "b", "add", "yes"));
        assertThat(lines(page)).isEqualTo(2);
        page = shown(printer.post(
                "/desk/print", "list", "Itea virginica, #3, 12\nCorylopsis spicata, #5, 3\n", "add", "yes"));
        assertThat(page.body()).contains("value=\"12\"").contains("value=\"3\"");
        page = shown(printer.upload(
                "/desk/print",
                "file",
                "delivery.csv",
                "name,count\nItea virginica,2\n".getBytes(StandardCharsets.UTF_8),
                "line",
                key("Corylopsis spicata") + "|",
                "count",
                "",
                "add",
                "yes"));
        assertThat(lines(page)).isEqualTo(2);
    }

    @Test
    void whatIsNotUnderstoodAddsNothingAndIsNotTypedAgain() throws IOException, InterruptedException {
        HttpResponse<String> page =
                printer.post("/desk/print", "list", "Itea virginica, #3\nXyzzyplant quux, #3", "add", "yes");
        assertThat(alert(page)).contains("Xyzzyplant quux");
        assertThat(lines(page)).isZero();
        assertThat(page.body()).contains("Xyzzyplant quux, #3</textarea>");
        assertThat(alert(printer.post("/desk/print", "list", "Itea virginica, #7", "add", "yes")))
                .contains("#7");
        assertThat(alert(printer.post("/desk/print", "need", "wibble", "add", "yes")))
                .contains("wibble");
        assertThat(alert(printer.post("/desk/print", "line", key("Itea virginica") + "|#3", "count", "some")))
                .contains("\"some\"".replace("\"", "&quot;"));
        assertThat(alert(printer.post("/desk/print", "doc", "poster"))).contains("doc");
    }

    @Test
    void aLineThatIsTickedOffIsGone() throws IOException, InterruptedException {
        HttpResponse<String> page = shown(printer.post(
                "/desk/print",
                "line",
                key("Itea virginica") + "|#3",
                "count",
                "2",
                "line",
                key("Corylopsis spicata") + "|#5",
                "count",
                "7",
                "drop",
                "0"));
        assertThat(lines(page)).isEqualTo(1);
        assertThat(page.body()).contains("Corylopsis spicata").contains("value=\"7\"");
    }

    @Test
    void cardsArePrintedInTheBackgroundAndWrittenDownUnderTheName() throws IOException, InterruptedException {
        byte[] pdf = printed(printer.post(
                "/desk/print",
                "line",
                key("Itea virginica") + "|#3",
                "count",
                "3",
                "doc",
                "card",
                "card",
                "small",
                "wide",
                "yes",
                "language",
                "es",
                "make",
                "yes"));
        assertThat(text(pdf)).startsWith("3 ").contains("Itea").contains("Lo que hay ahora");
        List<PrintedEntry> last = shop.benchleaf.prints().last(1);
        assertThat(last).singleElement().satisfies(entry -> {
            assertThat(entry.who()).isEqualTo("The printer");
            assertThat(entry.entry().format()).isEqualTo("small_wide");
            assertThat(entry.entry().copies()).isEqualTo(3);
            assertThat(entry.entry().price()).contains("18.50 USD");
        });
    }

    @Test
    void lookingWritesNothingDown() throws IOException, InterruptedException {
        int before = shop.benchleaf.prints().last(1000).size();
        shown(printer.post("/desk/print", "line", key("Itea virginica") + "|#3", "count", "1", "look", "yes"));
        assertThat(shop.benchleaf.prints().last(1000)).hasSize(before);
        try (Stream<Path> left = Files.list(shop.folder.resolve("print"))) {
            assertThat(left.filter(file -> file.getFileName().toString().startsWith("look-")))
                    .isEmpty();
        }
    }

    @Test
    void cellsThatAreUsedStayTickedAndAreLeftOut() throws IOException, InterruptedException {
        String[] chosen = {
            "line",
            key("Itea virginica") + "|#3",
            "count",
            "3",
            "doc",
            "label",
            "paper",
            "letter-30",
            "used",
            "1",
            "used",
            "2",
            "used",
            "99"
        };
        HttpResponse<String> page = shown(printer.post("/desk/print", chosen));
        assertThat(page.body())
                .contains("name=\"used\" value=\"2\" checked")
                .doesNotContain("name=\"used\" value=\"3\" checked");
        assertThat(Pattern.compile("name=\"used\"")
                        .matcher(page.body())
                        .results()
                        .count())
                .isEqualTo(30);
        String[] make = java.util.Arrays.copyOf(chosen, chosen.length + 2);
        make[chosen.length] = "make";
        make[chosen.length + 1] = "yes";
        assertThat(text(printed(printer.post("/desk/print", make))))
                .startsWith("1 ")
                .contains("L1");
    }

    @Test
    void whatShouldBePutRightStandsBesideThePicture() throws IOException, InterruptedException {
        HttpResponse<String> page = shown(
                printer.post("/desk/print", "line", key("Fothergilla gardenii") + "|", "count", "", "doc", "card"));
        assertThat(page.body()).contains("Nothing to be put right.");
        String plant = key("Corylopsis spicata");
        StaffClient editor = shop.as(Role.EDITOR);
        Matcher before = Pattern.compile(
                        "value=\"selling_note\"><input type=\"hidden\" name=\"before\" value=\"([^\"]*)\"")
                .matcher(editor.page("/desk/plants/" + plant));
        assertThat(before.find()).isTrue();
        editor.post(
                "/desk/plants/" + plant,
                "attribute",
                "selling_note",
                "before",
                before.group(1),
                "value",
                "red \u4e09 all autumn",
                "source",
                "our rows");
        page = shown(printer.post("/desk/print", "line", plant + "|", "count", "", "doc", "card"));
        assertThat(page.body()).contains("To be put right: 1").contains("Corylopsis spicata");
    }

    @Test
    void whatChangedSinceItWasPrintedIsToldAndPrintedAgain() throws IOException, InterruptedException {
        String fothergilla = key("Fothergilla gardenii");
        printed(printer.post(
                "/desk/print", "line", fothergilla + "|#3", "count", "2", "doc", "card", "card", "a6", "make", "yes"));
        Path prices = Files.writeString(
                shop.folder.resolve("prices.csv"),
                "lot,name,size,count,price,location\nL3,Fothergilla gardenii,#3,55,$26.50,B1\n");
        var imports = shop.benchleaf.imports();
        imports.apply(
                imports.plan(prices, java.util.Optional.empty(), java.util.Optional.empty(), LoadProgress.UNHEARD));
        shop.benchleaf.afterChange();
        String page = printer.page("/desk/print/changed");
        assertThat(page)
                .contains("Bench cards, A6")
                .contains("price 24.00 USD, now 26.50 USD")
                .contains("name=\"line\" value=\"" + fothergilla
                        + "|#3\"><input type=\"hidden\" name=\"count\" value=\"2\"")
                .contains("The printer");
        assertThat(printer.page("/desk")).containsPattern("changed since they were printed: [1-9]");
        printed(printer.post(
                "/desk/print", "line", fothergilla + "|#3", "count", "2", "doc", "card", "card", "a6", "make", "yes"));
        assertThat(printer.page("/desk/print/changed")).doesNotContain("Bench cards, A6");
        assertThat(shop.as(Role.VIEWER).page("/desk")).doesNotContain("/desk/print/changed");
    }

    @Test
    void aJobIsSeenByNobodyElse() throws IOException, InterruptedException {
        String path = StaffClient.led(
                printer.post("/desk/print", "line", key("Itea virginica") + "|", "count", "", "make", "yes"));
        assertThat(shop.as(Role.OWNER).get(path).statusCode()).isEqualTo(404);
        assertThat(shop.as(Role.OWNER).get(path + "/file").statusCode()).isEqualTo(404);
        assertThat(printer.get("/desk/print/job/none").statusCode()).isEqualTo(404);
    }

    @Test
    void onlyWhoMayPrintSeesTheDesk() throws IOException, InterruptedException {
        assertThat(shop.as(Role.WALKER).get("/desk/print").statusCode()).isEqualTo(403);
        assertThat(shop.as(Role.WALKER).page("/desk")).doesNotContain("/desk/print");
    }

    @Test
    void manyLinesFitIntoOneForm() throws IOException, InterruptedException {
        String pasted = ("Itea virginica, #3, 1\nCorylopsis spicata, #5, 1\n").repeat(3);
        assertThat(lines(shown(printer.post("/desk/print", "list", pasted, "add", "yes"))))
                .as("each once")
                .isEqualTo(2);
        String[] fields = new String[4 * PrintForm.MOST_LINES];
        for (int at = 0; at < fields.length; at += 4) {
            fields[at] = "line";
            fields[at + 1] = key("Itea virginica") + "|#3";
            fields[at + 2] = "count";
            fields[at + 3] = Integer.toString(1 + at / 4);
        }
        assertThat(lines(shown(printer.upload("/desk/print", "file", "", new byte[0], fields))))
                .isEqualTo(PrintForm.MOST_LINES);
    }

    @Test
    void anAvailabilityListAndProductSheetsArePrintedToo() throws IOException, InterruptedException {
        assertThat(text(printed(printer.post("/desk/print", "doc", "availability", "page", "a4", "make", "yes"))))
                .contains("Corylopsis", "Fothergilla");
        assertThat(text(printed(printer.post(
                        "/desk/print",
                        "line",
                        key("Itea virginica") + "|",
                        "count",
                        "",
                        "doc",
                        "sheet",
                        "make",
                        "yes"))))
                .startsWith("1 ")
                .contains("Itea virginica");
    }
}
