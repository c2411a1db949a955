package org.benchleaf.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/// Documents of many plants from the command line, over the demo nursery. What stands on them is tested where they are
/// made.
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PrintDocumentsTest {
    private static final String ITEA = "Itea virginica";
    private static final String FOTHERGILLA = "Fothergilla gardenii";
    private Path folder = Path.of("");
    private String shop = "";

    @BeforeAll
    void makeTheShop(@TempDir Path temporary) {
        folder = temporary;
        shop = temporary.resolve("demo").toString();
        assertThat(Run.benchleaf("demo", shop).code()).isZero();
    }

    private Run print(String file, String... arguments) {
        String[] all = new String[arguments.length + 5];
        all[0] = "print";
        System.arraycopy(arguments, 0, all, 1, arguments.length);
        all[arguments.length + 1] = "--workspace";
        all[arguments.length + 2] = shop;
        all[arguments.length + 3] = "--out";
        all[arguments.length + 4] = folder.resolve(file).toString();
        return Run.benchleaf(all);
    }

    private void isPdf(String file) throws IOException {
        assertThat(Files.readAllBytes(folder.resolve(file))).startsWith("%PDF-1.7".getBytes());
    }

    @Test
    void plantsAreComparedTwoToFourAtATime() throws IOException {
        assertThat(print("c.pdf", "comparison", ITEA, FOTHERGILLA).code()).isZero();
        isPdf("c.pdf");
        Run lonely = print("no.pdf", "comparison", ITEA);
        assertThat(lonely.code()).isNotZero();
        assertThat(lonely.err()).contains("1 plant cannot stand beside each other; give two to four");
        assertThat(folder.resolve("no.pdf")).doesNotExist();
    }

    @Test
    void whatCanBeHadIsListedAsAWholeOrForChosenPlants() throws IOException {
        Run whole = print("a.pdf", "availability");
        assertThat(whole.code()).isZero();
        assertThat(whole.out()).containsPattern("a\\.pdf: \\d\\d pages");
        assertThat(print("a2.pdf", "availability", ITEA, "--paper", "a4").out()).contains("a2.pdf: 1 page");
        isPdf("a.pdf");
    }

    @Test
    void aBulletinIsMadeOfChosenPlantsAndReasons() throws IOException {
        assertThat(print("b.pdf", "bulletin", ITEA, FOTHERGILLA, "--why", "Red now.", "--from", "2026-11-23")
                        .code())
                .isZero();
        isPdf("b.pdf");
        assertThat(print("b2.pdf", "bulletin", ITEA, "--why", "Red.", "--why", "Tall.")
                        .err())
                .contains("2 reasons for 1 plant; give at most one a plant, in their order");
    }

    @Test
    void aPlantListIsPrintedForItsClient() throws IOException {
        assertThat(Run.benchleaf("list", "new", "Mill Lane", "--zone", "6a", "--workspace", shop)
                        .code())
                .isZero();
        assertThat(Run.benchleaf(
                                "list",
                                "add",
                                "Mill Lane",
                                ITEA,
                                "--size",
                                "#3",
                                "--quantity",
                                "40",
                                "--workspace",
                                shop)
                        .code())
                .isZero();
        assertThat(print("l.pdf", "list", "Mill Lane").out()).contains("l.pdf: 3 pages");
        assertThat(print("l2.pdf", "list", "Mill Lane", "--no-sheets").out()).contains("l2.pdf: 2 pages");
        isPdf("l.pdf");
    }

    @ParameterizedTest
    @ValueSource(strings = {"es", "fr"})
    void paperSpeaksOtherLanguages(String language) throws IOException {
        assertThat(print("s.pdf", "sheet", ITEA, "--language", language, "--units", "both")
                        .code())
                .isZero();
        assertThat(print("k.pdf", "cards", ITEA, "--language", language).code()).isZero();
        isPdf("s.pdf");
    }

    @Test
    void aLanguageWithoutWordsIsRefusedByName() {
        assertThat(print("d.pdf", "sheet", ITEA, "--language", "de").err())
                .contains("no words of paper are written in \"de\"; there are: en, es, fr");
    }
}
