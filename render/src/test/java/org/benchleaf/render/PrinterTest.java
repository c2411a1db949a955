package org.benchleaf.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.benchleaf.content.ContentPack;
import org.benchleaf.content.MissingContent;
import org.benchleaf.render.page.BenchCard;
import org.benchleaf.render.page.PlantTitle;
import org.benchleaf.render.page.Shop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class PrinterTest {
    private final Printer printer = Printer.using(ContentPack.builtIn(), Photographs.NONE);

    private void cards(List<BenchCard> cards, OutputStream out) {
        printer.benchCards(cards, CardFormat.LARGE, PrintStyle.ENGLISH, out);
    }

    @ParameterizedTest
    @EnumSource(CardFormat.class)
    void cardsAreOnePageEachInTheirExactSize(CardFormat format) throws IOException {
        try (Printed printed =
                Printed.of(out -> printer.benchCards(SampleCards.cards(), format, PrintStyle.ENGLISH, out))) {
            assertThat(printed.pages()).isEqualTo(SampleCards.cards().size());
            for (int page = 0; page < printed.pages(); page++) {
                assertThat(printed.widthMm(page)).isCloseTo(format.widthMm(), within(0.05));
                assertThat(printed.heightMm(page)).isCloseTo(format.heightMm(), within(0.05));
            }
        }
    }

    @ParameterizedTest
    @EnumSource(SheetFormat.class)
    void sheetsAreOnePageEachInTheirExactSize(SheetFormat format) throws IOException {
        try (Printed printed =
                Printed.of(out -> printer.plantSheets(SampleSheets.sheets(), format, PrintStyle.ENGLISH, out))) {
            assertThat(printed.pages()).isEqualTo(SampleSheets.sheets().size());
            assertThat(printed.widthMm(0)).isCloseTo(format.widthMm(), within(0.05));
            assertThat(printed.heightMm(0)).isCloseTo(format.heightMm(), within(0.05));
        }
    }

    @Test
    void aCardSaysWhatTheCatalogSays() throws IOException {
        try (Printed printed = Printed.of(out -> cards(SampleCards.cards(), out))) {
            assertThat(printed.text(0))
                    .contains("Itea virginica", "‘Henry’s Garnet’", "Virginia sweetspire", "Full sun to part shade")
                    .contains("Moderate water", "Hardy in zones 5–9", "3–5 ft tall, 4–6 ft wide", "$21.50", "#3")
                    .contains("What is here now", "Wrenfold Growers");
            assertThat(printed.text(3)).contains("Poisonous to people, dogs, horses and livestock:");
        }
    }

    @Test
    void aSheetResolvesItsSourcesAndDefersInAnEmergency() throws IOException {
        try (Printed printed = Printed.of(
                out -> printer.plantSheets(SampleSheets.sheets(), SheetFormat.LETTER, PrintStyle.ENGLISH, out))) {
            assertThat(printed.text(0))
                    .contains("1 from memory", "2 Rutgers NJAES E271", "3 USDA PLANTS")
                    .contains("120 now", "60 from the week of 5 April 2027", "sold out")
                    .contains(
                            "Not on a list does not mean safe. In an emergency call poison control (US: 1-800-222-1222).");
            assertThat(printed.text(1))
                    .contains("New York: sale restricted since 10 March 2015")
                    .contains("Local law decides; ask your state department of agriculture.");
        }
    }

    @Test
    void nothingButOurFontsIsUsedAndAllAreEmbedded() throws IOException {
        try (Printed printed = Printed.of(
                out -> printer.plantSheets(SampleSheets.sheets(), SheetFormat.LETTER, PrintStyle.ENGLISH, out))) {
            assertThat(printed.fonts())
                    .isNotEmpty()
                    .allMatch(font -> font.startsWith("Newsreader") || font.startsWith("SourceSans3"))
                    .noneMatch(font -> font.endsWith("(not embedded)"));
        }
    }

    @Test
    void sameInputGivesSameBytes() {
        byte[] first = Printed.bytes(out -> cards(SampleCards.cards(), out));
        byte[] again = Printed.bytes(out -> Printer.using(ContentPack.builtIn(), Photographs.NONE)
                .benchCards(SampleCards.cards(), CardFormat.LARGE, PrintStyle.ENGLISH, out));
        assertThat(again).isEqualTo(first);
    }

    @Test
    void theDocumentAsksForNoScalingAndSaysItsTitleAndLanguage() throws IOException {
        try (Printed printed = Printed.of(out -> cards(SampleCards.cards(), out))) {
            COSDictionary preferences = printed.document()
                    .getDocumentCatalog()
                    .getViewerPreferences()
                    .getCOSObject();
            assertThat(preferences.getNameAsString(COSName.getPDFName("PrintScaling")))
                    .isEqualTo("None");
            assertThat(printed.document().getDocumentCatalog().getLanguage()).isEqualTo("en");
            assertThat(printed.document().getDocumentInformation().getTitle()).isEqualTo("Bench cards");
            assertThat(printed.document().getDocumentInformation().getCreationDate())
                    .isNull();
            assertThat(printed.document().getVersion()).isEqualTo(1.7f);
        }
    }

    @Test
    void markupInTheCatalogIsPrintedLiterally() throws IOException {
        BenchCard hostile = SampleCards.withShop(
                SampleCards.iteaCard(), new Shop("A & B <b>Nursery</b>", "<script>alert(1)</script> ${7*7}"));
        try (Printed printed = Printed.of(out -> cards(List.of(hostile), out))) {
            assertThat(printed.text(0)).contains("A & B <b>Nursery</b>", "<script>alert(1)</script> ${7*7}");
        }
    }

    @Test
    void aCharacterNoFontHasStopsThePrintAndIsNamed() {
        BenchCard card = withTitle(SampleCards.iteaCard(), PlantTitle.of(Samples.ITEA, "sweetspire 花"));
        assertThatThrownBy(() -> cards(List.of(card), OutputStream.nullOutputStream()))
                .isInstanceOfSatisfying(
                        PrintRefused.class,
                        refused -> assertThat(refused.problem().details())
                                .containsEntry("character", "花")
                                .containsEntry("code", "U+82B1")
                                .containsEntry("field", "common name")
                                .containsEntry("name", "Itea virginica 'Henry's Garnet'"));
    }

    @Test
    void accentsMarksAndFractionsAreInEveryFont() throws IOException {
        BenchCard card = withTitle(
                SampleCards.iteaCard(),
                PlantTitle.of(Samples.ITEA, "áéíóúüñçàèâêîôûëïöä × ® ™ ½ ¼ ° ‘’“” – — • ′ ″ ·"));
        try (Printed printed = Printed.of(out -> cards(List.of(card), out))) {
            assertThat(printed.text(0)).contains("áéíóúüñç", "®", "½", "″");
        }
    }

    @Test
    void aNameThatFitsNowhereIsRefusedByName() {
        BenchCard card = withTitle(SampleCards.iteaCard(), PlantTitle.of(Samples.ITEA, "word ".repeat(60)));
        assertThatThrownBy(() -> cards(List.of(card), OutputStream.nullOutputStream()))
                .isInstanceOfSatisfying(PrintRefused.class, refused -> {
                    assertThat(refused.problem().key()).isEqualTo("print.overflow");
                    assertThat(refused.problem().details())
                            .containsEntry("field", "common name")
                            .containsEntry("name", "Itea virginica 'Henry's Garnet'");
                });
    }

    @Test
    void nothingToPrintIsRefused() {
        assertThatThrownBy(() -> cards(List.of(), OutputStream.nullOutputStream()))
                .isInstanceOfSatisfying(
                        PrintRefused.class,
                        refused -> assertThat(refused.problem().key()).isEqualTo("print.nothing"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"styles/none.css", "file:///etc/hostname", "http://shop.example/x.css", "../../pom.xml"})
    void aStyleSheetThatIsMissingOrElsewhereStopsThePrint(String address, @TempDir Path shop) throws IOException {
        String template =
                ContentPack.builtIn().text("templates/plant-sheet.ftlh").replace("styles/sheet.css", address);
        assertThatThrownBy(() -> printWith(shop, "templates/plant-sheet.ftlh", template))
                .isInstanceOf(MissingContent.class)
                .hasMessageStartingWith(address + " is missing from ");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"file:///etc/hostname", "http://shop.example/x.png", "data:image/png;base64,AAAA", "figure:none"
            })
    void aPictureThatIsNoFigureOfThePageStopsThePrint(String address, @TempDir Path shop) throws IOException {
        String template =
                ContentPack.builtIn().text("templates/plant-sheet.ftlh").replace("figure:code", address);
        assertThatThrownBy(() -> printWith(shop, "templates/plant-sheet.ftlh", template))
                .isInstanceOf(MissingContent.class)
                .hasMessageStartingWith("picture " + address + " is missing from ");
    }

    @Test
    void aBackgroundPictureStopsThePrint(@TempDir Path shop) throws IOException {
        String style = ContentPack.builtIn().text("styles/sheet.css")
                + ".sheet { background-image: url(file:///etc/hostname) }";
        assertThatThrownBy(() -> printWith(shop, "styles/sheet.css", style)).isInstanceOf(MissingContent.class);
    }

    @Test
    void aFontFamilyThatNobodyRegisteredStopsThePrint(@TempDir Path shop) throws IOException {
        String style = ContentPack.builtIn().text("styles/sheet.css") + ".sheet-name { font-family: Georgia }";
        assertThatThrownBy(() -> printWith(shop, "styles/sheet.css", style))
                .isInstanceOf(MissingContent.class)
                .hasMessage("font family Georgia is missing from the fonts of the content pack");
    }

    @Test
    void aDoctypeInATemplateIsRefused(@TempDir Path shop) throws IOException {
        String template = "<!DOCTYPE html [<!ENTITY x SYSTEM 'file:///etc/hostname'>]>"
                + ContentPack.builtIn().text("templates/plant-sheet.ftlh");
        assertThatThrownBy(() -> printWith(shop, "templates/plant-sheet.ftlh", template))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("DOCTYPE is disallowed");
    }

    @Test
    void aTemplateCannotReachJava(@TempDir Path shop) throws IOException {
        String template = "${'freemarker.template.utility.Execute'?new()('id')}";
        assertThatThrownBy(() -> printWith(shop, "templates/plant-sheet.ftlh", template))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageStartingWith("template plant-sheet cannot be filled");
    }

    private static void printWith(Path shop, String key, String text) throws IOException {
        Files.createDirectories(shop.resolve(key).getParent());
        Files.writeString(shop.resolve(key), text);
        Printer.using(ContentPack.withShopFolder(shop), Photographs.NONE)
                .plantSheets(
                        SampleSheets.sheets().subList(0, 1),
                        SheetFormat.LETTER,
                        PrintStyle.ENGLISH,
                        OutputStream.nullOutputStream());
    }

    private static BenchCard withTitle(BenchCard card, PlantTitle title) {
        return SampleCards.copy(card, title, card.shop());
    }
}
