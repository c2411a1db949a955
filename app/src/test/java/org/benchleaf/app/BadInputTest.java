package org.benchleaf.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.ServerSocket;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// What a person gets who makes a mistake: one plain message that says where, what was read and what is
/// accepted; the right exit code; and a catalog in which nothing is half-applied.
class BadInputTest {
    @TempDir
    private Path folder;

    private Path shop;

    @BeforeEach
    void makeAWorkspace() {
        shop = folder.resolve("shop");
        assertThat(Run.benchleaf("new", shop.toString(), "--shop", "Test nursery")
                        .code())
                .isZero();
    }

    @Test
    void aFileThatIsNotThereIsNamed() {
        Run run = load(folder.resolve("plants.csv"));
        assertThat(run.code()).isEqualTo(3);
        assertThat(run.err()).contains("plants.csv").hasLineCount(1);
    }

    @Test
    void anUnknownZoneLeavesTheCellOutAndSaysWhatIsAccepted() throws IOException {
        Run run = load(file("plants.csv", """
                name,hardiness,source
                Clethra alnifolia,14c,from memory
                """));
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out())
                .contains("plants.csv row 2, column hardiness")
                .contains("14c")
                .contains("1 to 13");
        assertThat(known("Clethra alnifolia")).contains("Clethra alnifolia").doesNotContain("hardiness");
    }

    @Test
    void aHeightUpsideDownIsAFinding() throws IOException {
        Run run = load(file("plants.csv", """
                name,height,source
                Clethra alnifolia,8-6 ft,from memory
                """));
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out()).contains("plants.csv row 2, column height").contains("8-6 ft");
    }

    @Test
    void aNegativeCountIsNotLoaded() throws IOException {
        load(file("plants.csv", """
                name,source
                Clethra alnifolia,from memory
                """));
        Run run = load(file("stock.csv", """
                lot,name,size,count
                L1,Clethra alnifolia,#3,-5
                """));
        assertThat(run.code()).isNotZero();
        assertThat(run.out() + run.err())
                .contains("stock.csv row 2, column count")
                .contains("-5");
        assertThat(known("Clethra alnifolia")).doesNotContain("#3");
    }

    @Test
    void aKeyGivenTwiceLeavesNothingHalfLoaded() throws IOException {
        Run run = load(file("plants.csv", """
                key,name,source
                XKRH0DX,Clethra alnifolia,from memory
                XKRH0DX,Itea virginica,from memory
                """));
        assertThat(run.code()).isNotZero();
        assertThat(run.out() + run.err()).contains("row 3").contains("XKRH0DX");
    }

    @Test
    void aFileInAnotherEncodingIsReadAndSaidSo() throws IOException {
        Path file = folder.resolve("plants.csv");
        Files.write(
                file,
                "name,common_names_es,source\nAcer rubrum,arce de montaña,from memory\n"
                        .getBytes(Charset.forName("windows-1252")));
        Run run = load(file);
        assertThat(run.out()).contains("plants.csv").containsIgnoringCase("windows-1252");
        assertThat(known("Acer rubrum")).contains("arce de montaña");
    }

    @Test
    void aWorkspaceThatIsNotThereIsSaidWithWhatToDo() {
        Run run = Run.benchleaf(
                "plant", "Acer rubrum", "--workspace", folder.resolve("nowhere").toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("nowhere").contains("benchleaf new").hasLineCount(1);
    }

    @Test
    void aWorkspaceIsNeverMadeOverAnother() {
        Run run = Run.benchleaf("new", shop.toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("shop").hasLineCount(1);
    }

    @Test
    void aTakenPortIsNamed() throws IOException {
        try (ServerSocket taken = new ServerSocket(0, 1, java.net.InetAddress.getLoopbackAddress())) {
            Run run = Run.benchleaf(
                    "serve", "--workspace", shop.toString(), "--port", Integer.toString(taken.getLocalPort()));
            assertThat(run.code()).isEqualTo(2);
            assertThat(run.err())
                    .contains(Integer.toString(taken.getLocalPort()))
                    .contains("--port")
                    .hasLineCount(1);
        }
    }

    @Test
    void aPictureThatIsMissingStopsThePrintAndLeavesNoFile() throws IOException {
        Run run = printWith(
                "styles/sheet.css", "body { background: url(no-such-picture.png); }".getBytes(StandardCharsets.UTF_8));
        assertThat(run.code()).isEqualTo(3);
        assertThat(run.err()).contains("no-such-picture.png").hasLineCount(1);
        assertThat(folder.resolve("sheet.pdf")).doesNotExist();
    }

    @Test
    void aFontThatIsNoFontStopsThePrintAndLeavesNoFile() throws IOException {
        Run run = printWith("fonts/newsreader-medium.ttf", "not a font".getBytes(StandardCharsets.UTF_8));
        assertThat(run.code()).isEqualTo(3);
        assertThat(run.err()).contains("newsreader-medium").hasLineCount(1);
        assertThat(folder.resolve("sheet.pdf")).doesNotExist();
    }

    @Test
    void aPhotographThatIsMissingIsNamedWithItsPlantAndLeavesNoFile() throws IOException {
        load(file("plants.csv", """
                name,photographs,source
                Clethra alnifolia,in-bloom.jpg by A. Grower (CC BY 4.0),from memory
                """));
        for (String document : new String[] {"sheet", "cards"}) {
            Run run = print(document);
            assertThat(run.code()).isEqualTo(3);
            assertThat(run.err())
                    .contains("in-bloom.jpg")
                    .contains("Clethra alnifolia")
                    .contains(shop.resolve("photographs").toString())
                    .hasLineCount(document.equals("cards") ? 2 : 1); // a card without a price says so too
            assertThat(folder.resolve("printed.pdf")).doesNotExist();
        }
    }

    @Test
    void aPhotographThatIsNoPictureIsNamedAndLeavesNoFile() throws IOException {
        load(file("plants.csv", """
                name,photographs,source
                Clethra alnifolia,in-bloom.jpg,from memory
                """));
        Files.writeString(shop.resolve("photographs/in-bloom.jpg"), "not a picture");
        Run run = print("sheet");
        assertThat(run.code()).isEqualTo(3);
        assertThat(run.err()).contains("in-bloom.jpg").contains("JPEG or PNG").hasLineCount(1);
        assertThat(folder.resolve("printed.pdf")).doesNotExist();
    }

    @Test
    void aPhotographOutsideItsFolderIsAFinding() throws IOException {
        Run run = load(file("plants.csv", """
                name,photographs,source
                Clethra alnifolia,../settings.jpg,from memory
                """));
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out()).contains("plants.csv row 2, column photographs").contains("../settings.jpg");
    }

    private Run print(String document) {
        return Run.benchleaf(
                "print",
                document,
                "Clethra alnifolia",
                "--workspace",
                shop.toString(),
                "--out",
                folder.resolve("printed.pdf").toString());
    }

    private Run printWith(String key, byte[] content) throws IOException {
        load(file("plants.csv", """
                name,source
                Clethra alnifolia,from memory
                """));
        Path own = shop.resolve("content").resolve(key);
        Files.createDirectories(own.getParent());
        Files.write(own, content);
        return Run.benchleaf(
                "print",
                "sheet",
                "Clethra alnifolia",
                "--workspace",
                shop.toString(),
                "--out",
                folder.resolve("sheet.pdf").toString());
    }

    @Test
    void aSettingThatNobodyKnowsIsNamedWithThoseThatAreKnown() throws IOException {
        Files.writeString(
                shop.resolve("settings.properties"),
                Files.readString(shop.resolve("settings.properties")) + "colour = green\n");
        Run run = Run.benchleaf("plant", "Acer", "--workspace", shop.toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("colour").contains("shop.name").hasLineCount(1);
    }

    @Test
    void aNameThatNobodyHasIsRefused() {
        Run run = Run.benchleaf("plant", "Nonesuch", "--workspace", shop.toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("Nonesuch").hasLineCount(1);
    }

    @Test
    void cellsThatAreNotOnTheSheetAreRefused() throws IOException {
        load(file("plants.csv", """
                name,source
                Clethra alnifolia,from memory
                """));
        load(file("stock.csv", """
                lot,name,size,count
                L1,Clethra alnifolia,#3,5
                """));
        Run run = Run.benchleaf(
                "print",
                "labels",
                "Clethra alnifolia",
                "--used",
                "1-31",
                "--workspace",
                shop.toString(),
                "--out",
                folder.resolve("labels.pdf").toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("letter-30").hasLineCount(1);
    }

    private Run load(Path file) {
        return Run.benchleaf("load", file.toString(), "--workspace", shop.toString());
    }

    private String known(String name) {
        return Run.benchleaf("plant", name, "--workspace", shop.toString()).out();
    }

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }
}
