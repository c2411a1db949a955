package org.benchleaf.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// Settings shown and changed, and what is asked before printed codes are left behind.
class SettingsCommandTest {
    private Path shop = Path.of("");

    @BeforeEach
    void makeAShop(@TempDir Path folder) throws IOException {
        shop = folder.resolve("shop");
        Run.benchleaf("new", shop.toString(), "--base", "https://old.example");
        Path plants = Files.writeString(folder.resolve("plants.csv"), "name\nItea virginica\n");
        Path stock = Files.writeString(
                folder.resolve("stock.csv"), "lot,name,size,place,count,price\nL1,Itea virginica,#3,A1,20,18.50\n");
        Run.benchleaf("load", plants.toString(), "-w", shop.toString());
        Run.benchleaf("load", stock.toString(), "-w", shop.toString());
    }

    private Run settings(String... arguments) {
        List<String> all = new ArrayList<>(List.of("settings"));
        all.addAll(List.of(arguments));
        all.addAll(List.of("-w", shop.toString()));
        return Run.benchleaf(all.toArray(String[]::new));
    }

    @Test
    void oneOrAllAreShown() {
        assertThat(settings("base").out().strip()).isEqualTo("base = https://old.example");
        assertThat(settings().out()).contains("shop.name = My nursery", "palette = slate", "paper = letter");
    }

    @Test
    void aChangeLeavesTheRestOfTheFileAsItIs() throws IOException {
        List<String> before = Files.readAllLines(shop.resolve(Settings.FILE));
        assertThat(settings("palette", "fern").code()).isZero();
        List<String> after = Files.readAllLines(shop.resolve(Settings.FILE));
        assertThat(after).contains("palette = fern").hasSameSizeAs(before);
        assertThat(after).filteredOn(line -> !before.contains(line)).containsExactly("palette = fern");
    }

    @Test
    void aListIsTotalledForEachKindOfCustomer() {
        assertThat(settings("tiers", "landscaper 1.15, retail 2.2").code()).isZero();
        Run.benchleaf("list", "new", "Mill Lane", "-w", shop.toString());
        Run.benchleaf("list", "add", "Mill Lane", "Itea virginica", "--quantity", "3", "-w", shop.toString());
        // 3 at 18.50; 18.50 x 1.15 = 21.275, rounded 21.28; 18.50 x 2.2 = 40.70
        assertThat(Run.benchleaf("list", "show", "Mill Lane", "-w", shop.toString())
                        .out())
                .contains("3 plants, $55.50")
                .contains("landscaper: $63.84")
                .contains("retail: $122.10");
        assertThat(Run.benchleaf("list", "show", "Mill Lane", "--json", "-w", shop.toString())
                        .out())
                .contains("\"tier\" : \"landscaper\"")
                .contains("\"amount\" : \"63.84\"");
        assertThat(settings("tiers", "landscaper none").err()).contains("landscaper 1.15, retail 2.2");
    }

    @Test
    void aChangeWithoutMeaningIsRefusedAndNothingIsWritten() throws IOException {
        String before = Files.readString(shop.resolve(Settings.FILE));
        assertThat(settings("lengths", "cubits").err())
                .contains("setting \"lengths\" in " + shop.toAbsolutePath(), "\"cubits\"");
        assertThat(settings("color", "red").err()).contains("setting \"color\"", "is not known");
        assertThat(Files.readString(shop.resolve(Settings.FILE))).isEqualTo(before);
    }

    @Test
    void anotherAddressIsAskedAboutWhenPrintedCodesLeadToTheOldOne() {
        assertThat(settings("base", "https://new.example").code())
                .as("nothing printed yet")
                .isZero();
        Run.benchleaf(
                "print",
                "labels",
                "Itea virginica",
                "--copies",
                "40",
                "-w",
                shop.toString(),
                "-o",
                shop.resolve("labels.pdf").toString());
        Run asked = settings("base", "https://newer.example");
        assertThat(asked.code()).isEqualTo(ErrorReport.USAGE);
        assertThat(asked.err())
                .contains(
                        "40 printed codes, the last of 2026-11-25, lead to https://new.example",
                        "40 printed codes would then lead elsewhere than https://newer.example",
                        "say --yes");
        assertThat(settings("base").out()).contains("https://new.example");
        assertThat(settings("base", "https://newer.example", "--yes").code()).isZero();
        assertThat(settings("base").out()).contains("https://newer.example");
    }

    @Test
    void goingBackToTheAddressOfThePaperIsNotAskedAbout() {
        Run.benchleaf(
                "print",
                "labels",
                "Itea virginica",
                "-w",
                shop.toString(),
                "-o",
                shop.resolve("labels.pdf").toString());
        settings("base", "https://new.example", "--yes");
        assertThat(settings("base", "https://old.example").code()).isZero();
    }

    @Test
    void anAddressThatIsNoneIsRefused() {
        assertThat(settings("base", "somewhere").err()).contains("web address \"somewhere\" not understood");
    }
}
