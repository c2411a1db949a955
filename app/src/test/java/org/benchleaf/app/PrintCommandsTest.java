package org.benchleaf.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// Printing as a garden center does it: cards from a delivery, checked first, entered in the ledger, and only what
/// changed printed again.
class PrintCommandsTest {
    @TempDir
    private Path folder;

    private Path shop;

    @BeforeEach
    void makeAShop() throws IOException {
        shop = folder.resolve("shop");
        assertThat(Run.benchleaf(
                                "new",
                                shop.toString(),
                                "--shop",
                                "Test nursery",
                                "--base",
                                "https://plants.test.example")
                        .code())
                .isZero();
        load("plants.csv", """
                key,name,common_names,height,source
                XKRH0DX,Clethra alnifolia,summersweet,4-8 ft,from memory
                P1BXYG7,Itea virginica,Virginia sweetspire,3-5 ft,from memory
                """);
        load("stock.csv", """
                lot,name,size,price,count,place,seen_on
                L1,Clethra alnifolia,#3,21.50,3,B4-12,2026-11-20
                L2,Itea virginica,#3,19.00,2,B4-2,2026-09-01
                L3,Itea virginica,#5,,4,B1-1,2026-11-20
                """);
    }

    private void load(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.writeString(file, text);
        Run run = Run.benchleaf("load", file.toString(), "--workspace", shop.toString());
        assertThat(run.code()).as(run.out() + run.err()).isLessThan(2);
    }

    private Run print(String... arguments) {
        String[] all = new String[arguments.length + 3];
        all[0] = "print";
        System.arraycopy(arguments, 0, all, 1, arguments.length);
        all[all.length - 2] = "--workspace";
        all[all.length - 1] = shop.toString();
        return Run.benchleaf(all);
    }

    private String out() {
        return folder.resolve("out.pdf").toString();
    }

    @Test
    void aCardWithoutAPriceIsToldAndPrintedUnlessStrict() {
        Run strict = print("cards", "Itea virginica", "--size", "#5", "--strict", "-o", out());
        assertThat(strict.code()).isEqualTo(ErrorReport.FINDINGS);
        assertThat(strict.err()).contains("Itea virginica has no price", "nothing was printed");
        assertThat(Path.of(out())).doesNotExist();

        Run lenient = print("cards", "Itea virginica", "--size", "#5", "-o", out());
        assertThat(lenient.code()).isEqualTo(ErrorReport.FINDINGS);
        assertThat(lenient.out()).contains("1 card");
        assertThat(print("cards", "Itea virginica", "--size", "#5", "--no-price", "--strict", "-o", out())
                        .code())
                .isZero();
    }

    @Test
    void findingsComeAsJsonWithPlantFieldAndRemedy() throws IOException {
        Run run = print("cards", "Itea virginica", "--size", "#5", "--json", "-o", out());
        JsonNode root = new ObjectMapper().readTree(run.out());
        assertThat(root.get("pages").asInt()).isEqualTo(1);
        assertThat(root.get("findings")).hasSize(1);
        assertThat(root.get("findings").get(0).get("plant").asText()).isEqualTo("Itea virginica");
        assertThat(root.get("findings").get(0).get("field").asText()).isEqualTo("price");
        assertThat(root.get("findings").get(0).get("remedy").asText()).contains("enter one");
    }

    @Test
    void onlyWhatChangedIsPrintedAgain() throws IOException {
        print("cards", "Clethra alnifolia", "Itea virginica", "-o", out());
        Run unchanged = print("reprint", "--changed-since", "2026-11-01", "-o", out());
        assertThat(unchanged.code()).isEqualTo(ErrorReport.USAGE);
        assertThat(unchanged.err()).contains("nothing to print again");

        load("stock.csv", """
                lot,name,size,price,count,place,seen_on
                L1,Clethra alnifolia,#3,22.50,3,B4-12,2026-11-20
                """);
        assertThat(print("reprint", "-o", out()).out()).contains("1 changed card");
        assertThat(print("reprint", "-o", out()).err()).contains("nothing to print again");

        load("plants.csv", """
                key,name,height,source
                P1BXYG7,Itea virginica,3-6 ft,from memory
                """);
        assertThat(print("reprint", "-o", out()).out()).contains("1 changed card");
        assertThat(print("reprint", "--changed-since", "2026-12-01", "-o", out())
                        .err())
                .contains("nothing to print again");
    }

    @Test
    void labelsThatSayAnotherPlaceTodayArePrintedAgainOnTheirPaperOnly() throws IOException {
        print("labels", "Clethra alnifolia", "Itea virginica", "--copies", "2", "-o", out());
        Run unchanged = print("reprint", "--labels", "-o", out());
        assertThat(unchanged.err()).contains("nothing to print again");

        load("stock.csv", """
                lot,name,size,price,count,place,seen_on
                L1,Clethra alnifolia,#3,21.50,3,B4-14,2026-11-20
                """);
        assertThat(print("reprint", "--labels", "--paper", "a4-21", "-o", out()).err())
                .contains("nothing to print again");
        assertThat(print("reprint", "--labels", "-o", out()).out()).contains("1 sheet of changed label");
        assertThat(print("ledger", "--last", "1").out()).contains("2 × label (letter-30)  Clethra alnifolia");
        assertThat(print("reprint", "--labels", "-o", out()).err()).contains("nothing to print again");
    }

    @Test
    void aSheetIsLookedThroughLikeACard() throws IOException {
        load("plants.csv", """
                key,name,photographs,source
                P1BXYG7,Itea virginica,none.jpg,from memory
                """);
        Run run = print("sheet", "Itea virginica", "Clethra alnifolia", "-o", out());
        assertThat(run.code()).isEqualTo(ErrorReport.FINDINGS);
        assertThat(run.err()).contains("photograph none.jpg of Itea virginica is not in the folder");
        assertThat(run.out()).contains("1 page");
        assertThat(print("ledger").out())
                .contains("1 × sheet (letter)  Clethra alnifolia")
                .doesNotContain("Itea");
        assertThat(print("sheet", "Itea virginica", "--strict", "-o", out()).err())
                .contains("nothing");
    }

    @Test
    void theLedgerTellsWhatWasPrintedAtWhichPriceAndAddress() {
        print("cards", "Clethra alnifolia", "-o", out());
        print("labels", "Itea virginica", "--size", "#3", "--copies", "5", "-o", out());
        assertThat(print("ledger").out())
                .contains("6 printed codes lead to https://plants.test.example")
                .contains("1 × card (large)  Clethra alnifolia  21.50 USD  https://plants.test.example/p/XKRH0DX-1")
                .contains("5 × label (letter-30)  Itea virginica");
    }

    @Test
    void aNewAddressIsWarnedOfWithTheNumberOfCodesInTheField() throws IOException {
        print("labels", "Itea virginica", "--size", "#3", "--copies", "5", "-o", out());
        Path settings = shop.resolve("settings.properties");
        Files.writeString(settings, Files.readString(settings).replace("plants.test.example", "new.test.example"));
        Run run = print("cards", "Clethra alnifolia", "-o", out());
        assertThat(run.err()).contains("5 printed codes lead to https://plants.test.example", "keep that address");
    }

    @Test
    void labelsByCountComeInBenchOrderAndOldCountsAreDoubted() throws IOException {
        Run run = print(
                "labels",
                "Clethra alnifolia",
                "Itea virginica",
                "--copies-from-stock",
                "--order",
                "bench",
                "-o",
                out());
        assertThat(run.code()).isEqualTo(ErrorReport.FINDINGS);
        assertThat(run.err()).contains("lot L2 of Itea virginica was last seen on 2026-09-01, 85 days ago");
        assertThat(print("ledger").out()).contains("4 × label", "3 × label", "2 × label");
    }

    @Test
    void aDeliverysSpreadsheetSaysWhatIsPrinted() throws IOException {
        Path delivery = folder.resolve("delivery.csv");
        Files.writeString(delivery, "Name,Size,Count\nClethra alnifolia,#3,2\nItea virginica,#3,1\n");
        assertThat(print("cards", "--from", delivery.toString(), "-o", out()).out())
                .contains("3 cards");

        Files.writeString(delivery, "Name,Size,Count\nClethra alnifolia,#3,many\n");
        Run wrong = print("cards", "--from", delivery.toString(), "-o", out());
        assertThat(wrong.code()).isEqualTo(ErrorReport.USAGE);
        assertThat(wrong.err()).contains("\"many\" in row 2 of delivery.csv");
    }

    @Test
    void aLongRunIsWrittenInPartsAndGoesOnWhereItStopped() throws IOException {
        String[] cards = {"cards", "Clethra alnifolia", "Itea virginica", "--part", "1", "-o", out()};
        assertThat(print(cards).out()).contains("out-1.pdf: 1 card", "out-2.pdf: 1 card");
        Files.delete(folder.resolve("out-2.pdf"));
        Run resumed = print("cards", "Clethra alnifolia", "Itea virginica", "--part", "1", "--resume", "-o", out());
        assertThat(resumed.out()).contains("out-1.pdf: there already", "out-2.pdf: 1 card");
    }

    @Test
    void aPrinterIsMeasuredOnceAndPutRightByName() throws IOException {
        assertThat(print("calibration", "--printer", "back office", "-o", out()).code())
                .isZero();
        Run kept = print("calibrate", "--printer", "back office", "--measured", "19.2,20.5,150,200");
        assertThat(kept.out()).contains("back office", "+0.80 mm to the right", "-0.50 mm down");
        byte[] plain = bytes("cards", "Clethra alnifolia", "-o", out());
        byte[] put = bytes("cards", "Clethra alnifolia", "--printer", "back office", "-o", out());
        assertThat(put).isNotEqualTo(plain);
        assertThat(print("cards", "Clethra alnifolia", "--printer", "front", "-o", out())
                        .err())
                .contains("printer \"front\" is not known; known are: back office");
        assertThat(print("calibrate", "--printer", "x", "--measured", "190,20,150,200")
                        .code())
                .isEqualTo(ErrorReport.USAGE);
    }

    @Test
    void theSameCardsGiveTheSameBytes() throws IOException {
        byte[] first = bytes("cards", "Clethra alnifolia", "Itea virginica", "-o", out());
        assertThat(bytes("cards", "Clethra alnifolia", "Itea virginica", "-o", out()))
                .isEqualTo(first);
    }

    @Test
    void cropMarksAndBleedAreForThePress() throws IOException {
        assertThat(print("cards", "Clethra alnifolia", "--bleed", "3", "-o", out())
                        .code())
                .isZero();
        assertThat(print("cards", "Clethra alnifolia", "--bleed", "40", "-o", out())
                        .err())
                .contains("a bleed of 40.0 mm");
    }

    private byte[] bytes(String... arguments) throws IOException {
        Files.deleteIfExists(Path.of(out()));
        Run run = print(arguments);
        assertThat(run.code()).as(run.err()).isZero();
        return Files.readAllBytes(Path.of(out()));
    }

    @Test
    void documentsOfManyPlantsAreLookedThroughTooAndAListGoesWithoutWhatCannotBePrinted() throws IOException {
        load("plants.csv", """
                key,name,common_names,source
                P1BXYG7,Itea virginica,鼠刺,from memory
                """);
        Run list = print("availability", "-o", out(), "--json");
        assertThat(list.code()).isEqualTo(ErrorReport.FINDINGS);
        JsonNode root = new ObjectMapper().readTree(list.out());
        assertThat(root.get("pages").asInt()).isEqualTo(1);
        assertThat(root.get("findings").get(0).get("plant").asText()).isEqualTo("Itea virginica");
        assertThat(root.get("findings").get(0).get("kind").asText()).isEqualTo("print.glyph");

        Files.delete(Path.of(out()));
        Run compared = print("comparison", "Clethra alnifolia", "Itea virginica", "-o", out());
        assertThat(compared.code()).isEqualTo(ErrorReport.FAILED);
        assertThat(compared.err()).contains("Itea virginica");
        assertThat(Path.of(out())).doesNotExist();
    }

    @Test
    void theCodeOfABulletinStandsInTheLedger() {
        assertThat(print("bulletin", "Clethra alnifolia", "Itea virginica", "-o", out())
                        .code())
                .isZero();
        assertThat(print("ledger").out())
                .contains(
                        "1 printed codes lead to https://plants.test.example",
                        "bulletin (letter)",
                        "Clethra alnifolia");
    }
}
