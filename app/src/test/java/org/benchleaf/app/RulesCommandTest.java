package org.benchleaf.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/// Sale rules from a list to the answer of a command and of a need.
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RulesCommandTest {
    private static final String HEADINGS =
            "id,kind,jurisdiction,taxon,also_named,standing,receipt_from,sale_from,exempt,notice,source,compiled_on\n";
    private static final String CAUTION =
            "List compiled on 25 November 2026. Local law decides; ask the state department of agriculture.";

    private Path folder = Path.of("");
    private Path shop = Path.of("");

    @BeforeAll
    void makeShop(@TempDir Path temporary) throws IOException {
        folder = temporary;
        shop = folder.resolve("shop");
        assertThat(Run.benchleaf("new", shop.toString()).code()).isZero();
        load("load", "plants.csv", """
                name,source
                Clethra alnifolia,from memory
                Euonymus alatus,from memory
                Euonymus americanus,from memory
                """);
        load("load", "stock.csv", """
                lot,name,size,count
                L1,Euonymus alatus,#25,12
                """);
        Run rules = load(
                "rules",
                "rules.csv",
                HEADINGS
                        + "PA-1,,US-PA,Euonymus alatus,Euonymus alata,prohibited,,2025-01-10,,noxious weed,a gazette,2026-11-25\n"
                        + "NY-1,,US-NY,Euonymus alatus,,restricted,,2015-03-10,,label as invasive,a gazette,2026-11-25\n"
                        + "MA-1,,US-MA,Miscanthus sinensis,,prohibited,2025-12-08,2027-01-01,,,a gazette,2026-11-25\n"
                        + manyStates());
        assertThat(rules.out()).contains("15 rules loaded");
        assertThat(rules.code()).isZero();
    }

    /// Twelve more states that prohibit it, with long remarks and a source each.
    private static String manyStates() {
        return Arrays.stream("CT DE IN MA MD ME NH NJ OH RI VT WV".split(" "))
                .map(state -> state + "-2,,US-" + state + ",Euonymus alatus,,prohibited,,2024-01-01,,"
                        + "a long remark on what the state asks of nurseries and what it lets them do until when,"
                        + "gazette of " + state + ",2026-11-25\n")
                .collect(Collectors.joining());
    }

    private Run load(String command, String file, String content) throws IOException {
        Path path = folder.resolve(file);
        Files.writeString(path, content);
        return command.equals("rules") ? run("rules", "--load", path.toString()) : run(command, path.toString());
    }

    private Run run(String... arguments) {
        List<String> all = new ArrayList<>(Arrays.asList(arguments));
        all.addAll(List.of("--workspace", shop.toString()));
        return Run.benchleaf(all.toArray(String[]::new));
    }

    @Test
    void saysWhatMayNotBeSoldAndHowOldTheListIs() {
        Run run = run("rules", "Euonymus alata", "--ship-to", "PA", "--on", "2027-03-01");

        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out())
                .contains("May not be sold or shipped to Pennsylvania on 1 March 2027")
                .contains("Pennsylvania: sale prohibited since 10 January 2025")
                .contains("source: a gazette")
                .contains(CAUTION);
    }

    @Test
    void judgesANameThatIsNotInTheCatalog() {
        Run sold = run("rules", "Miscanthus sinensis", "--ship-to", "MA", "--on", "2026-12-30", "--json");
        Run later = run("rules", "Miscanthus sinensis", "--ship-to", "MA", "--on", "2027-01-01", "--json");
        Run shipped = run("rules", "Miscanthus sinensis", "--ship-to", "MA", "--on", "2026-12-30", "--from", "PA");

        assertThat(sold.code()).isZero();
        assertThat(sold.out()).contains("\"sale\" : \"none\"").contains("\"receipt\" : \"prohibited\"");
        assertThat(later.code()).isEqualTo(1);
        assertThat(later.out()).contains("\"answer\" : \"barred\"");
        assertThat(shipped.code()).isEqualTo(1);
    }

    @Test
    void placeWithoutAListIsNotKnown() {
        assertThat(run("rules", "Clethra alnifolia", "--ship-to", "Wyoming").out())
                .contains("not known whether it may be sold there")
                .contains(CAUTION);
    }

    @Test
    void whatNobodyKnowsIsRefusedNotAllowed() {
        assertThat(run("rules", "Nonsensia absurda", "--ship-to", "PA").code()).isEqualTo(2);
        assertThat(run("rules", "Euonymus alatus", "--ship-to", "Atlantis").code())
                .isEqualTo(2);
        assertThat(run("rules", "Euonymus alatus", "--ship-to", "PA", "--on", "soon")
                        .code())
                .isEqualTo(2);
    }

    @Test
    void needLeavesOutWhatIsBarredThere() {
        Run pennsylvania = run("need", "--genus", "Euonymus", "--ship-to", "PA");
        Run words = run("need", "Euonymus, ship to NY");

        assertThat(pennsylvania.out())
                .contains("Euonymus americanus")
                .doesNotContain("Euonymus alatus")
                .contains(CAUTION);
        assertThat(words.out()).contains("Euonymus alatus").contains("label as invasive");
    }

    @Test
    void plantRuledInManyStatesStillFitsItsSheet() throws IOException {
        Path pdf = folder.resolve("sheet.pdf");
        Run run = run("print", "sheet", "Euonymus alatus", "--out", pdf.toString());

        assertThat(run.err()).isEmpty();
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            assertThat(new PDFTextStripper().getText(document).replaceAll("\\s+", " "))
                    .contains("Connecticut, Delaware, Indiana, Massachusetts, Maryland")
                    .contains("sale prohibited")
                    .contains("New York: sale restricted since 10 March 2015, label as invasive")
                    .contains("Local law decides; ask your state department of agriculture.")
                    .contains("sale rules, list compiled on 2026-11-25")
                    .contains("Heavy to lift: about 150 lb in #25");
        }
    }

    @Test
    void halfAListIsNotLoaded() throws IOException {
        Run run = load(
                "rules",
                "broken.csv",
                HEADINGS
                        + "X-1,,US-PA,Clethra alnifolia,,prohibited,,2020-01-01,,,s,2026-11-25\n"
                        + "X-2,,Atlantis,Clethra alnifolia,,prohibited,,,,,s,2026-11-25\n");

        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out()).contains("broken.csv row 3, column jurisdiction").contains("Nothing was loaded");
        assertThat(run("rules", "Clethra alnifolia", "--ship-to", "PA").code()).isZero();
    }

    @Test
    void everyOptionIsDocumented() throws IOException {
        String text = Files.readString(Path.of("../docs/sale-rules.md"));
        Matcher option = Pattern.compile("(--[a-z-]+)")
                .matcher(Run.benchleaf("rules", "--help").out());
        while (option.find()) {
            if (!List.of("--help", "--version", "--workspace").contains(option.group(1))) {
                assertThat(text).contains("`" + option.group(1));
            }
        }
    }
}
