package org.benchleaf.app.web.staff;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.benchleaf.app.PrinterShelf;
import org.benchleaf.app.Settings;
import org.benchleaf.app.service.PressOrder;
import org.benchleaf.app.service.PrintOrder;
import org.benchleaf.app.service.Wanted;
import org.benchleaf.catalog.accounts.Role;
import org.benchleaf.content.Telling;
import org.benchleaf.render.CardFormat;
import org.benchleaf.render.SheetFormat;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/// What the owner looks after: settings, printers, sale rules, backups, health.
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class OwnerPagesTest {
    private static final String HEAD = "id,jurisdiction,taxon,standing,sale_from,source,compiled_on\n";

    private DeskShop shop;
    private StaffClient owner;
    private Path folder;

    @BeforeAll
    void open(@TempDir Path parent) throws IOException {
        folder = parent;
        shop = new DeskShop(parent, "Test nursery");
        owner = shop.as(Role.OWNER);
    }

    @AfterAll
    void close() {
        shop.close();
    }

    private static String alert(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).isEqualTo(422);
        Matcher alert = Pattern.compile("role=\"alert\">(?:<p>)?([^<]*)<").matcher(answer.body());
        assertThat(alert.find()).isTrue();
        return alert.group(1);
    }

    private Settings file() {
        return Settings.read(shop.folder.resolve(Settings.FILE));
    }

    /// The form of the settings with some fields otherwise.
    private String[] settings(String... others) {
        List<String> fields = new ArrayList<>(List.of(
                "shop.name",
                file().shopName(),
                "shop.line",
                "",
                "base",
                file().base().toString(),
                "place",
                "",
                "language",
                "en",
                "lengths",
                "imperial",
                "containers",
                "number",
                "palette",
                "slate",
                "accent",
                "",
                "paper",
                "letter",
                "counts",
                "public",
                "prices",
                "public"));
        for (int at = 0; at < others.length; at += 2) {
            fields.set(fields.indexOf(others[at]) + 1, others[at + 1]);
        }
        return fields.toArray(String[]::new);
    }

    @Test
    void settingsAreSavedAndEverythingElseInTheirFileStays() throws IOException, InterruptedException {
        Path file = shop.folder.resolve(Settings.FILE);
        Files.writeString(file, Files.readString(file) + "# a remark of the owner\n");
        HttpResponse<String> saved = owner.post(
                "/desk/shop",
                settings(
                        "shop.name",
                        "Elm & \\Oak",
                        "counts",
                        "coarse",
                        "palette",
                        "fern",
                        "place",
                        "US-PA",
                        "paper",
                        "a4"));
        assertThat(StaffClient.led(saved)).isEqualTo("/desk/shop?done=shop-saved");
        assertThat(file().shopName()).isEqualTo("Elm & \\Oak");
        assertThat(file().choices().telling().counts()).isEqualTo(Telling.Counts.COARSE);
        assertThat(file().choices().look().palette()).isEqualTo("fern");
        assertThat(file().choices().look().paper()).isEqualTo(SheetFormat.A4);
        assertThat(Files.readString(file)).contains("# a remark of the owner").contains("# inks of paper");
        assertThat(owner.page("/desk/shop")).contains("value=\"Elm &amp; \\Oak\"");
    }

    @Test
    void whatHasNoMeaningIsRefusedAndNothingIsSaved() throws IOException, InterruptedException {
        String before = Files.readString(shop.folder.resolve(Settings.FILE));
        assertThat(alert(owner.post("/desk/shop", settings("place", "Atlantis"))))
                .contains("Atlantis");
        assertThat(alert(owner.post("/desk/shop", settings("shop.name", "")))).isNotBlank();
        assertThat(alert(owner.post("/desk/shop", settings("palette", "../x")))).contains("palette");
        assertThat(Files.readString(shop.folder.resolve(Settings.FILE))).isEqualTo(before);
        assertThat(shop.as(Role.EDITOR).get("/desk/shop").statusCode()).isEqualTo(403);
    }

    @Test
    void anAddressThatCodesInTheFieldLeadToIsNotChangedUnwarned() throws IOException, InterruptedException {
        String old = file().base().toString();
        var itea = shop.benchleaf.plantFinder().find("Itea virginica");
        shop.benchleaf
                .printing()
                .cards()
                .print(
                        List.of(new Wanted(itea, java.util.Optional.empty(), java.util.Optional.of(7))),
                        true,
                        CardFormat.SMALL,
                        PrintOrder.GIVEN,
                        PressOrder.USUAL,
                        folder.resolve("cards.pdf"));
        HttpResponse<String> warned = owner.post("/desk/shop", settings("base", "https://new.example"));
        assertThat(alert(warned)).contains("Nothing was saved yet");
        assertThat(warned.body()).contains("<b>7</b> " + old).contains("name=\"sure\"");
        assertThat(file().base().toString()).isEqualTo(old);
        List<String> sure = new ArrayList<>(List.of(settings("base", "https://new.example")));
        sure.addAll(List.of("sure", "yes"));
        assertThat(StaffClient.led(owner.post("/desk/shop", sure.toArray(String[]::new))))
                .isEqualTo("/desk/shop?done=shop-saved");
        assertThat(file().base().toString()).isEqualTo("https://new.example");
    }

    @Test
    void aPrinterIsMeasuredAndKept() throws IOException, InterruptedException {
        try (var page = Loader.loadPDF(owner.bytes("/desk/shop/calibration?paper=a4"))) {
            // ISO 216: A4 is 210 × 297 mm
            assertThat(page.getPage(0).getMediaBox().getWidth()).isBetween(595.2f, 595.4f);
        }
        HttpResponse<String> kept = owner.post(
                "/desk/shop/printer",
                "printer",
                "back office",
                "left",
                "19.2",
                "top",
                "20,5",
                "wide",
                "149.4",
                "tall",
                "200");
        assertThat(StaffClient.led(kept)).isEqualTo("/desk/shop?done=printer-kept");
        // docs/printing.md's own example: everything moves to the right again
        assertThat(new PrinterShelf(shop.benchleaf.workspace())
                        .printer("back office")
                        .rightMm())
                .isPositive();
        assertThat(owner.page("/desk/print")).contains("<option value=\"back office\"");
        assertThat(alert(owner.post(
                        "/desk/shop/printer",
                        "printer",
                        "x",
                        "left",
                        "far",
                        "top",
                        "20",
                        "wide",
                        "150",
                        "tall",
                        "200")))
                .contains("far");
        assertThat(alert(owner.post(
                        "/desk/shop/printer", "printer", "x", "left", "90", "top", "20", "wide", "150", "tall", "200")))
                .contains("cannot be put right");
    }

    @Test
    void aListOfRulesIsLoadedAskedAndTakenInAgainOtherwise() throws IOException, InterruptedException {
        StaffClient editor = shop.as(Role.EDITOR);
        byte[] list = (HEAD + "T-1,US-PA,Itea virginica,prohibited,2026-01-01,a test,2026-11-01\n")
                .getBytes(StandardCharsets.UTF_8);
        assertThat(StaffClient.led(editor.upload("/desk/rules", "file", "our-rules.csv", list)))
                .isEqualTo("/desk/rules?done=rules-loaded");
        String asked = editor.page("/desk/rules?plant=" + StaffClient.encoded("Itea virginica") + "&to=PA");
        assertThat(asked)
                .contains("May not be sold or shipped to")
                .contains("source: a test")
                .contains("Local law decides")
                .contains("Rules in force or to come: 1");
        byte[] broken = (HEAD + "T-1,Atlantis,Itea virginica,prohibited,2026-01-01,a test,2026-11-01\n")
                .getBytes(StandardCharsets.UTF_8);
        HttpResponse<String> refused = editor.upload("/desk/rules", "file", "our-rules.csv", broken);
        assertThat(alert(refused)).contains("nothing of it was loaded");
        assertThat(refused.body()).contains("Atlantis").contains("Rules in force or to come: 1");
        byte[] ended = (HEAD.replace("sale_from", "sale_from,until")
                        + "T-1,US-PA,Itea virginica,prohibited,2026-01-01,2026-11-20,a test,2026-11-01\n")
                .getBytes(StandardCharsets.UTF_8);
        editor.upload("/desk/rules", "file", "our-rules.csv", ended);
        assertThat(editor.page("/desk/rules")).contains("Rules in force or to come: 0");
        assertThat(shop.as(Role.PRINTER)
                        .upload("/desk/rules", "file", "our-rules.csv", list)
                        .statusCode())
                .isEqualTo(403);
    }

    @Test
    void aCopyIsMadeProvedAndTakenAway() throws IOException, InterruptedException {
        assertThat(StaffClient.led(owner.post("/desk/backup"))).isEqualTo("/desk/backup?done=backup-made");
        String page = owner.page("/desk/backup");
        Matcher link = Pattern.compile("/desk/backup/(benchleaf-\\d{8}-\\d{6})").matcher(page);
        assertThat(link.find()).isTrue();
        List<String> names = new ArrayList<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(owner.bytes(link.group())))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                names.add(entry.getName());
            }
        }
        assertThat(names).contains(link.group(1) + "/benchleaf.db", link.group(1) + "/" + Settings.FILE);
        assertThat(owner.get("/desk/backup/..%2f..").statusCode()).isIn(400, 404);
        assertThat(owner.get("/desk/backup/benchleaf-20200101-000000").statusCode())
                .isEqualTo(404);
        assertThat(shop.as(Role.EDITOR).get(link.group()).statusCode()).isEqualTo(403);
        assertThat(owner.page("/desk/health")).contains(link.group(1));
    }

    @Test
    void healthTellsHowFarTheSearchIs() throws IOException, InterruptedException {
        assertThat(owner.page("/desk/health"))
                .contains("level with the catalog")
                .contains("MB free")
                .contains("stock.csv, ");
    }

    @Test
    void aPictureBecomesTheLogoOnlyWhenItCanBePrinted() throws IOException, InterruptedException {
        byte[] text = "no picture".getBytes(StandardCharsets.UTF_8);
        assertThat(alert(owner.upload("/desk/shop/logo", "logo", "logo.png", text)))
                .contains("logo.png");
        assertThat(alert(owner.upload("/desk/shop/logo", "logo", "../settings.properties", text)))
                .isNotBlank();
        assertThat(file().choices().look().logo()).isEmpty();

        ByteArrayOutputStream png = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(120, 40, BufferedImage.TYPE_INT_RGB), "png", png);
        assertThat(owner.upload("/desk/shop/logo", "logo", "our sign.PNG", png.toByteArray())
                        .statusCode())
                .isEqualTo(303);
        assertThat(file().choices().look().logo()).contains("logo.png");
        assertThat(shop.folder.resolve("logo.png")).exists();

        assertThat(owner.post("/desk/shop/logo", "none", "yes").statusCode()).isEqualTo(303);
        assertThat(file().choices().look().logo()).isEmpty();
    }
}
