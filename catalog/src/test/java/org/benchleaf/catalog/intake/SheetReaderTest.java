package org.benchleaf.catalog.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.benchleaf.catalog.intake.Finding.Outcome;
import org.benchleaf.shared.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SheetReaderTest {
    private static final Charset WINDOWS = Charset.forName("windows-1252");

    private static Sheet sheet(String text) {
        return SheetReader.open("list.csv", text.getBytes(StandardCharsets.UTF_8));
    }

    private static List<List<String>> cells(Sheet sheet) {
        return sheet.rows().map(RawRow::cells).toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {",", ";", "\t", "|"})
    void findsOutWhatPartsTheCells(String delimiter) {
        String text = "name,height,exposure\n\"Acer rubrum\",40-60 ft,full sun\n".replace(",", delimiter);
        try (Sheet sheet = sheet(text)) {
            assertThat(sheet.delimiter()).isEqualTo(delimiter.charAt(0));
            assertThat(sheet.headings()).containsExactly("name", "height", "exposure");
            assertThat(cells(sheet)).containsExactly(List.of("Acer rubrum", "40-60 ft", "full sun"));
        }
    }

    @Test
    void countsDelimitersOutsideQuotesOnly() {
        try (Sheet sheet = sheet("\"name, with author\";height\nAcer rubrum;40 ft\n")) {
            assertThat(sheet.headings()).containsExactly("name, with author", "height");
        }
    }

    @Test
    void takesAFirstLineThatNamesTheDelimiter() {
        try (Sheet sheet = sheet("sep=;\nname;height\nAcer rubrum;40 ft\n")) {
            assertThat(sheet.rows().toList())
                    .containsExactly(new RawRow(3, List.of("Acer rubrum", "40 ft"), List.of()));
        }
    }

    @ParameterizedTest
    @CsvSource({"UTF-8, ''", "UTF-8, \uFEFF", "UTF-16LE, \uFEFF", "UTF-16BE, \uFEFF", "UTF-16LE, ''", "UTF-16BE, ''"})
    void readsUnicodeWithAndWithoutAMark(String charset, String mark) {
        byte[] bytes = (mark + "name,note\nSyringa 'Späth',Abelia ×grandiflora\n").getBytes(Charset.forName(charset));
        try (Sheet sheet = SheetReader.open("list.csv", bytes)) {
            assertThat(sheet.headings()).containsExactly("name", "note");
            assertThat(cells(sheet)).containsExactly(List.of("Syringa 'Späth'", "Abelia ×grandiflora"));
            assertThat(sheet.findings()).isEmpty();
        }
    }

    @Test
    void readsBytesThatAreNotUtf8AsWindows1252AndSaysSo() {
        byte[] bytes = "name,note\nAcer rubrum,\nSyringa 'Späth',×\n".getBytes(WINDOWS);
        try (Sheet sheet = SheetReader.open("list.csv", bytes)) {
            assertThat(cells(sheet).get(1)).containsExactly("Syringa 'Späth'", "×");
            assertThat(sheet.findings())
                    .containsExactly(new Finding(
                            new Place("list.csv", 3, Optional.empty()),
                            Problem.of("text.not-utf8", "E4").with("taken", "ä").with("encoding", "Windows-1252"),
                            Outcome.KEPT));
        }
    }

    @ParameterizedTest
    @CsvSource({"Abelia Ã—grandiflora, Abelia ×grandiflora", "Syringa 'SpÃ¤th', Syringa 'Späth'", "‘Choiceâ€™, ‘Choice’"
    })
    void putsTextRightThatWasDecodedTwice(String damaged, String meant) {
        if (damaged.startsWith("‘")) {
            damaged = "â€˜Choiceâ€™";
        }
        try (Sheet sheet = sheet("name,height\n" + damaged + ",6 ft\n")) {
            RawRow row = sheet.rows().findFirst().orElseThrow();
            assertThat(row.cells()).containsExactly(meant, "6 ft");
            assertThat(row.findings())
                    .containsExactly(new Finding(
                            new Place("list.csv", 2, Optional.of("name")),
                            Problem.of("text.mojibake", damaged).with("taken", meant),
                            Outcome.KEPT));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"Âme", "Späth", "Ä", "Château", "â", "naïve – Ô"})
    void leavesTextThatIsRightAlone(String text) {
        assertThat(Mojibake.repaired(text)).isEmpty();
    }

    @Test
    void saysWhereLettersWereLost() {
        try (Sheet sheet = sheet("name\nSyringa 'Sp\uFFFDth'\n")) {
            assertThat(sheet.rows().flatMap(row -> row.findings().stream()))
                    .extracting(finding -> finding.problem().key())
                    .containsExactly("text.lost");
        }
    }

    @Test
    void countsRowsAsASpreadsheetDoes() {
        try (Sheet sheet = sheet("name,note\r\nAcer rubrum,\"two\nlines\"\r\n\r\n,\r\nTilia cordata,x\r\n")) {
            assertThat(sheet.rows().map(RawRow::number)).containsExactly(2L, 5L);
        }
    }

    @Test
    void leavesOutARowWithMoreCellsThanHeadings() {
        try (Sheet sheet = sheet("name,exposure,height\nAcer rubrum,full sun,part sun,40 ft\n")) {
            RawRow row = sheet.rows().findFirst().orElseThrow();
            assertThat(row.findings())
                    .containsExactly(new Finding(
                            new Place("list.csv", 2, Optional.empty()),
                            Problem.of("row.long", "Acer rubrum")
                                    .with("found", "4")
                                    .with("expected", "3"),
                            Outcome.ROW_LEFT_OUT));
            assertThat(row.isUsable()).isFalse();
        }
    }

    @Test
    void keepsARowWithFewerCellsAndSaysSo() {
        try (Sheet sheet = sheet("name,exposure,height\nAcer rubrum,full sun\n")) {
            RawRow row = sheet.rows().findFirst().orElseThrow();
            assertThat(row.cells()).containsExactly("Acer rubrum", "full sun", "");
            assertThat(row.findings())
                    .extracting(finding -> finding.problem().key(), Finding::outcome)
                    .containsExactly(org.assertj.core.groups.Tuple.tuple("row.short", Outcome.KEPT));
        }
    }

    @Test
    void noticesAQuoteThatSwallowedRows() {
        String text = "name,exposure,height\nAcer rubrum,\"full sun,40 ft\nTilia cordata,full sun,\"50 ft\nUlmus,x,y\n";
        try (Sheet sheet = sheet(text)) {
            assertThatThrownBy(() -> sheet.rows().toList()).isInstanceOf(SheetException.class);
        }
        String closed =
                "name,exposure,height\nAcer rubrum,\"full sun,40 ft\nTilia cordata,full sun\",50 ft\nUlmus,x,y\n";
        try (Sheet sheet = sheet(closed)) {
            assertThat(sheet.rows().filter(row -> !row.isUsable()).map(RawRow::number))
                    .containsExactly(2L);
        }
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
        '',                       file.empty
        ' \n \n',                 file.empty
        'PK\u0003\u0004 workbook',file.xlsx
        '%PDF-1.7',               file.binary
        'name\u0000\u0001,height',file.binary
        'name,note\na,\"b',       file.quotes
        """)
    void refusesWhatIsNoTable(String content, String key) {
        assertThatThrownBy(() -> {
                    try (Sheet sheet = sheet(content.replace("\\n", "\n").replace("\\\"", "\""))) {
                        sheet.rows().toList();
                    }
                })
                .isInstanceOfSatisfying(
                        SheetException.class,
                        refused -> assertThat(refused.problem().key()).isEqualTo(key));
    }

    @Test
    void refusesAnOldWorkbook() {
        byte[] bytes = {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, (byte) 0xA1, (byte) 0xB1, 0x1A, (byte) 0xE1};
        assertThatThrownBy(() -> SheetReader.open("stock.xls", bytes))
                .isInstanceOfSatisfying(
                        SheetException.class,
                        refused -> assertThat(refused.problem()).isEqualTo(Problem.of("file.xls", "stock.xls")));
    }

    @Test
    void refusesAFileThatIsNotThereAndAFolder(@TempDir Path folder) {
        assertThatThrownBy(() -> SheetReader.open(folder.resolve("plants.csv")))
                .isInstanceOfSatisfying(
                        SheetException.class,
                        refused -> assertThat(refused.problem()).isEqualTo(Problem.of("file.missing", "plants.csv")));
        assertThatThrownBy(() -> SheetReader.open(folder))
                .isInstanceOfSatisfying(
                        SheetException.class,
                        refused -> assertThat(refused.problem().key()).isEqualTo("file.directory"));
    }

    @Test
    void readsFilesLargerThanAnyBuffer(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("large.csv");
        Files.writeString(file, "name,note\n" + "Syringa 'Späth',×\n".repeat(20_000));
        try (Sheet sheet = SheetReader.open(file)) {
            assertThat(sheet.rows().count()).isEqualTo(20_000);
            assertThat(sheet.findings()).isEmpty();
        }
    }

    @Property
    void readsAnyBytesOrRefusesThemByItsOwnException(@ForAll byte[] bytes) {
        try (Sheet sheet = SheetReader.open("any.csv", bytes)) {
            sheet.rows().forEach(row -> assertThat(row.cells()).hasSameSizeAs(sheet.headings()));
        } catch (SheetException refused) {
            assertThat(refused.problem().key()).startsWith("file.");
        }
    }
}
