package org.benchleaf.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// What a shop decides about the look of its paper, from its settings to the page.
class ShopLookTest {
    private static final String LOGO = """
        <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 300 100">
        <rect width="300" height="100" fill="#2f5f34"/></svg>
        """;

    private Path shop = Path.of("");

    @BeforeEach
    void makeAShop(@TempDir Path folder) throws IOException {
        shop = folder.resolve("shop");
        Run.benchleaf("new", shop.toString());
        Path plants = Files.writeString(
                folder.resolve("plants.csv"), "name,common_names\nItea virginica,Virginia sweetspire\nAcer rubrum,\n");
        Path stock = Files.writeString(
                folder.resolve("stock.csv"), "lot,name,size,place,count,price\nL1,Itea virginica,#3,A1,20,18.50\n");
        Run.benchleaf("load", plants.toString(), "-w", shop.toString());
        Run.benchleaf("load", stock.toString(), "-w", shop.toString());
    }

    private void set(String line) throws IOException {
        Files.writeString(shop.resolve(Settings.FILE), line + "\n", StandardOpenOption.APPEND);
    }

    private Run print(String document, String... arguments) {
        List<String> all = new java.util.ArrayList<>(List.of("print", document));
        all.addAll(List.of(arguments));
        all.addAll(List.of("-w", shop.toString(), "-o", file(document).toString()));
        return Run.benchleaf(all.toArray(String[]::new));
    }

    private Path file(String document) {
        return shop.resolve(document + ".pdf");
    }

    /// Every picture of the file, each counted once.
    private Set<COSBase> pictures(String document) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(file(document).toFile())) {
            Set<COSBase> found = new HashSet<>();
            for (PDPage page : pdf.getPages()) {
                for (COSName name : page.getResources().getXObjectNames()) {
                    if (page.getResources().isImageXObject(name)) {
                        found.add(page.getResources().getXObject(name).getCOSObject());
                    }
                }
            }
            return found;
        }
    }

    @Test
    void theLogoStandsOnEveryDocumentAndIsStoredOnce() throws IOException {
        set("logo = logo.svg");
        Files.writeString(shop.resolve("logo.svg"), LOGO);
        assertThat(print("sheet", "Itea virginica", "Acer rubrum").err()).isEmpty();
        print("cards", "Itea virginica", "Acer rubrum", "--no-price");
        print("sign", "Itea virginica");
        print("availability", "--all");
        print("bulletin", "Itea virginica", "Acer rubrum");
        print("comparison", "Itea virginica", "Acer rubrum");
        for (String document : List.of("sheet", "cards", "sign", "availability", "bulletin", "comparison")) {
            assertThat(pictures(document)).as(document).hasSize(1);
        }
    }

    @Test
    void labelsAreTooSmallForALogo() throws IOException {
        set("logo = logo.svg");
        Files.writeString(shop.resolve("logo.svg"), LOGO);
        assertThat(print("labels", "Itea virginica").code()).isZero();
        assertThat(pictures("labels")).isEmpty();
    }

    @Test
    void aLogoThatIsNotThereOrIsNoneIsToldBeforeAnythingIsPrinted() throws IOException {
        set("logo = logo.png");
        Run missing = print("sheet", "Itea virginica");
        assertThat(missing.err()).contains("the logo \"logo.png\" is not in " + shop.toAbsolutePath());
        Files.writeString(shop.resolve("logo.png"), "not a picture");
        assertThat(print("sheet", "Itea virginica").err()).contains("the logo logo.png is no PNG, JPEG or SVG");
        assertThat(file("sheet")).doesNotExist();
    }

    @Test
    void aLogoOutsideTheWorkspaceIsNoLogo() throws IOException {
        set("logo = ../logo.png");
        assertThat(print("sheet", "Itea virginica").err()).contains("setting \"logo\"", "a file in the workspace");
    }

    // WCAG 2.x: #777777 on white is 4.48 and fails, #767676 is 4.54 and passes
    @Test
    void anAccentThatCannotBeReadOnWhiteIsRefused() throws IOException {
        set("accent = #777777");
        assertThat(print("sheet", "Itea virginica").err())
                .contains("setting \"accent\"", "#777777", "4.4 only; choose a darker one, of 4.5 or more");
        set("accent = #767676");
        assertThat(print("sheet", "Itea virginica").err()).isEmpty();
    }

    @Test
    void anAccentOfTheShopsOwnIsInkedOnThePage() throws IOException {
        print("sheet", "Itea virginica");
        assertThat(content("sheet")).doesNotContain("0.55686 0.06275 0.19608 rg");
        set("accent = #8e1032");
        print("sheet", "Itea virginica");
        assertThat(content("sheet")).contains("0.55686 0.06275 0.19608 rg");
    }

    private String content(String document) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(file(document).toFile())) {
            return new String(
                    pdf.getPage(0).getContents().readAllBytes(), java.nio.charset.StandardCharsets.ISO_8859_1);
        }
    }

    // ISO 216: A4 is 210 x 297 mm
    @Test
    void theShopsPaperIsUsedWhenNobodyAsksForAnother() throws IOException {
        set("paper = a4");
        print("sheet", "Itea virginica");
        try (PDDocument pdf = Loader.loadPDF(file("sheet").toFile())) {
            assertThat(pdf.getPage(0).getMediaBox().getHeight() / 72 * 25.4)
                    .isCloseTo(297, org.assertj.core.data.Offset.offset(0.05));
        }
    }
}
