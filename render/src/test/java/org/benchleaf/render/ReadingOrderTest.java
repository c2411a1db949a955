package org.benchleaf.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionURI;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.benchleaf.content.ContentPack;
import org.benchleaf.render.page.LabelRun;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReadingOrderTest {
    private final Printer printer = Printer.using(ContentPack.builtIn(), Photographs.NONE);

    private Printed sheet() throws IOException {
        return Printed.of(out ->
                printer.plantSheets(SampleSheets.sheets().subList(0, 1), SheetFormat.LETTER, PrintStyle.ENGLISH, out));
    }

    @Test
    void aCardIsReadFromItsNameToItsKey() throws IOException {
        try (Printed printed = Printed.of(out ->
                printer.benchCards(List.of(SampleCards.iteaCard()), CardFormat.LARGE, PrintStyle.ENGLISH, out))) {
            List<String> lines = Structure.of(printed).lines();
            assertThat(lines)
                    .startsWith("Document", "Sect", "H1 Itea virginica ‘Henry’s Garnet’", "P Virginia sweetspire")
                    .containsSubsequence(
                            "P Full sun to part shade",
                            "P $21.50 each",
                            "Figure [Code that leads to "
                                    + SampleCards.iteaCard().link() + "]",
                            "P " + SampleCards.iteaCard().link().plant());
            assertThat(lines)
                    .filteredOn(line -> line.startsWith("Figure [Flower: "))
                    .hasSize(1);
        }
    }

    @Test
    void allWordsOfAPageBelongToSomething() throws IOException {
        try (Printed printed = sheet()) {
            assertThat(Structure.of(printed).ornament()).isEmpty();
        }
    }

    @Test
    void headsOfRowsAndColumnsSayWhichTheyAre() throws IOException {
        try (Printed printed = sheet()) {
            assertThat(Structure.of(printed).lines())
                    .contains("TH/Row Height", "TH/Column Size", "H2 What is here Stock as of 25 November 2026, 09:00");
        }
    }

    @Test
    void theFootIsReadLast() throws IOException {
        try (Printed printed = sheet()) {
            assertThat(Structure.of(printed).lines().getLast())
                    .startsWith("Link https://")
                    .endsWith("(link)");
        }
    }

    @Test
    void everyCardIsAPartOfItsOwnAndEveryLabelAParagraph() throws IOException {
        try (Printed cards = Printed.of(
                        out -> printer.benchCards(SampleCards.cards(), CardFormat.LARGE, PrintStyle.ENGLISH, out));
                Printed labels = Printed.of(out -> printer.labels(
                        SampleCards.labels(30),
                        LabelRun.on(ContentPack.builtIn().paper("letter-30")),
                        PrintStyle.ENGLISH,
                        out))) {
            assertThat(Structure.of(cards).lines().stream().filter(line -> line.equals("Sect")))
                    .hasSize(SampleCards.cards().size());
            assertThat(Structure.of(labels).lines().stream().filter(line -> line.startsWith("Figure [https://")))
                    .hasSize(30);
        }
    }

    @Test
    void aLinkLiesOnItsWords() throws IOException {
        try (Printed printed = sheet()) {
            List<PDAnnotation> links = printed.document().getPage(0).getAnnotations();
            assertThat(links).hasSize(1);
            PDAnnotationLink link = (PDAnnotationLink) links.getFirst();
            String address = SampleSheets.sheets().getFirst().link().toString();
            assertThat(((PDActionURI) link.getAction()).getURI()).isEqualTo(address);
            assertThat(link.getContents()).isEqualTo(address);
            PDRectangle place = link.getRectangle();
            // the address stands at the right edge of the last line of the foot
            var last = printed.glyphs(0).stream()
                    .max(java.util.Comparator.comparing(glyph -> glyph.getYDirAdj() * 10_000 + glyph.getXDirAdj()))
                    .orElseThrow();
            double height = printed.document().getPage(0).getMediaBox().getHeight();
            assertThat(place.getUpperRightX()).isCloseTo(last.getXDirAdj() + last.getWidthDirAdj(), within(0.5f));
            assertThat(height - last.getYDirAdj())
                    .isBetween((double) place.getLowerLeftY(), (double) place.getUpperRightY());
        }
    }

    @Test
    void anAddressThatIsNoAddressOfTheWebIsNoLink(@TempDir Path shop) throws IOException {
        String template = ContentPack.builtIn().text("templates/plant-sheet.ftlh");
        for (String address : List.of("javascript:alert(1)", "file:///etc/hostname", "#top", "\\\\server\\share")) {
            write(
                    shop,
                    template.replace(
                            "${words[\"sheet.call\"]}", "<a id='top' onclick='x()' href='" + address + "'>here</a>"));
            try (Printed printed = shopsSheet(shop)) {
                // the one in its foot is the sheet's own
                assertThat(printed.document().getPage(0).getAnnotations()).hasSize(1);
                assertThat(new String(printed.bytes(), java.nio.charset.StandardCharsets.ISO_8859_1))
                        .doesNotContain("/JavaScript");
            }
        }
    }

    @Test
    void listsSpansAndHiddenWordsAreWhatTheyAreInHtml(@TempDir Path shop) throws Exception {
        String template = ContentPack.builtIn().text("templates/plant-sheet.ftlh");
        write(shop, template.replace("${words[\"sheet.call\"]}</div>", """
                        </div><div style="position: absolute; font-size: 5pt">
                        <ul><li>one</li><li>two <a href="https://shop.example/x">three</a></li></ul>
                        <table><tr><th colspan="2">both</th></tr><tr><td>left</td><td/></tr></table>
                        <p aria-hidden="true">ornament</p><p>A <span lang="la">Quercus</span> of ours</p>
                        </div>
                        """));
        try (Printed printed = shopsSheet(shop)) {
            Structure structure = Structure.of(printed);
            assertThat(structure.lines())
                    .containsSubsequence("L", "LI", "LBody one", "LI", "LBody two", "Link three (link)")
                    .containsSubsequence("Table", "TR", "TH/Column both", "TR", "TD left", "TD")
                    .containsSubsequence("P A  of ours", "Span Quercus");
            assertThat(structure.ornament()).contains("ornament");
            Vera.assertAccessibleAndArchivable(printed.bytes());
        }
    }

    private static void write(Path shop, String template) throws IOException {
        Path file = shop.resolve("templates/plant-sheet.ftlh");
        Files.createDirectories(file.getParent());
        Files.writeString(file, template);
    }

    private static Printed shopsSheet(Path shop) throws IOException {
        Printer own = Printer.using(ContentPack.withShopFolder(shop), Photographs.NONE);
        return Printed.of(out -> own.plantSheets(
                SampleSheets.sheets().subList(0, 1),
                SheetFormat.LETTER,
                new PrintStyle(Locale.ENGLISH, PrintStyle.ENGLISH.lengths()),
                out));
    }
}
