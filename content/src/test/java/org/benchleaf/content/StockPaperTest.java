package org.benchleaf.content;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StockPaperTest {
    private final ContentPack content = ContentPack.builtIn();

    // right and bottom margins left over, in the unit of the row; the a4-21 row is seen at
    // printreadykit.pages.dev/label-templates/address-labels, the size of letter-30 at
    // sizedesk.pages.dev/address-label-size, the others are from memory with their closure checked
    @ParameterizedTest
    @CsvSource({
        "letter-30, 25.4, 0.1875, 0.5",
        "letter-10, 25.4, 0.15625, 0.5",
        "letter-20, 25.4, 0.15625, 0.5",
        "letter-14, 25.4, 0.15625, 0.8336",
        "letter-6, 25.4, 0.15625, 0.5001",
        "letter-80, 25.4, 0.28125, 0.5",
        "letter-cards-10, 25.4, 0.75, 0.5",
        "letter-cards-4, 25.4, 0, 0",
        "letter-cards-2, 25.4, 0, 0",
        "a4-21, 1, 7.3, 15.15",
        "a4-24, 1, 7.3, 12.9",
        "a4-14, 1, 4.65, 15.15",
        "a4-8, 1, 4.65, 13.1",
        "a4-65, 1, 4.85, 10.7"
    })
    void cellsAndMarginsAddUpToTheSheet(String key, double unit, double right, double bottom) {
        StockPaper paper = content.paper(key);
        assertThat(paper.x(paper.columns() - 1) + paper.labelWidth() + right * unit)
                .isCloseTo(paper.sheetWidth(), within(0.01));
        assertThat(paper.y(paper.rows() - 1) + paper.labelHeight() + bottom * unit)
                .isCloseTo(paper.sheetHeight(), within(0.01));
    }

    @Test
    void everyPaperIsReadAndNamesItsSource() {
        assertThat(content.papers())
                .hasSize(21)
                .allSatisfy(paper -> assertThat(paper.source()).isNotBlank());
    }

    @Test
    void missingPaperIsNamed() {
        assertThatThrownBy(() -> content.paper("letter-31"))
                .isInstanceOf(MissingContent.class)
                .hasMessage("stock paper letter-31 is missing from stock-papers.csv");
    }

    @Test
    void overlappingCellsAreRefused() {
        assertThatThrownBy(() -> new StockPaper("x", "x", 100, 100, 2, 1, 40, 20, 5, 5, 39, 20, 0, "test"))
                .hasMessage("x: cells overlap");
        assertThatThrownBy(() -> new StockPaper("x", "x", 100, 100, 2, 1, 40, 20, 5, 5, 60, 20, 0, "test"))
                .hasMessage("x: cells leave the sheet");
    }

    @Test
    void theShopsFileIsTakenBeforeTheProgramsOwn(@TempDir Path shop) throws Exception {
        Files.createDirectories(shop.resolve("styles"));
        Files.writeString(shop.resolve("styles/sheet.css"), "/* ours */", StandardCharsets.UTF_8);
        ContentPack laidOver = ContentPack.withShopFolder(shop);
        assertThat(laidOver.text("styles/sheet.css")).isEqualTo("/* ours */");
        assertThat(laidOver.text("styles/type.css")).isEqualTo(content.text("styles/type.css"));
    }

    @ParameterizedTest
    @CsvSource({
        "styles/none.css",
        "../pom.xml",
        "/etc/hostname",
        "file:///etc/hostname",
        "http://shop.example/x.css",
        "styles/../styles/sheet.css",
        "styles//card.css"
    })
    void whatIsNoKeyOrNotThereIsMissing(String key) {
        assertThatThrownBy(() -> content.bytes(key))
                .isInstanceOf(MissingContent.class)
                .hasMessage(key + " is missing from the built-in content");
    }
}
