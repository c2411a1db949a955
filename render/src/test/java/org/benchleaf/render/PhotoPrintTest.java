package org.benchleaf.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSDocument;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.benchleaf.content.ContentPack;
import org.benchleaf.render.page.BenchCard;
import org.benchleaf.render.page.Photo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PhotoPrintTest {
    private final Printer printer = Printer.using(ContentPack.builtIn(), new SamplePhotos());

    @ParameterizedTest
    @EnumSource(CardFormat.class)
    void everyCardTakesEveryShapeOfPhotographOnOnePage(CardFormat format) throws IOException {
        List<BenchCard> cards = PhotoSamples.withPhotos(SampleCards.cards());
        try (Printed printed = Printed.of(out -> printer.benchCards(cards, format, PrintStyle.ENGLISH, out))) {
            assertThat(printed.pages()).isEqualTo(cards.size());
        }
    }

    @ParameterizedTest
    @EnumSource(SheetFormat.class)
    void everySheetTakesEveryShapeOfPhotographOnOnePage(SheetFormat format) throws IOException {
        var sheets = PhotoSamples.sheetsWithPhotos(SampleSheets.sheets());
        try (Printed printed = Printed.of(out -> printer.plantSheets(sheets, format, PrintStyle.ENGLISH, out))) {
            assertThat(printed.pages()).isEqualTo(sheets.size());
        }
    }

    @Test
    void aPhotographOnManyPagesIsStoredOnce() throws IOException {
        BenchCard card = PhotoSamples.with(SampleCards.iteaCard(), PhotoSamples.LYING);
        try (Printed printed = Printed.of(
                out -> printer.benchCards(List.of(card, card, card), CardFormat.LARGE, PrintStyle.ENGLISH, out))) {
            assertThat(streams(printed, COSName.IMAGE)).isEqualTo(1);
        }
    }

    @Test
    void photographsThatComeInTurnInBoxesOfManySizesAreStoredOnceAndSoIsEachFont() throws IOException {
        Printer own = Printer.using(ContentPack.builtIn(), new OnePhotograph(SamplePhotos.leaves(600, 450, "jpg")));
        List<BenchCard> cards = new ArrayList<>();
        for (int turn = 0; turn < 6; turn++) {
            for (BenchCard card : SampleCards.cards()) {
                cards.add(PhotoSamples.with(card, new Photo("leaves-" + cards.size() % 9 + ".jpg", "", "")));
            }
        }
        try (Printed printed = Printed.of(out -> own.benchCards(cards, CardFormat.LARGE, PrintStyle.ENGLISH, out))) {
            assertThat(cards).hasSizeGreaterThan(20);
            assertThat(streams(printed, COSName.IMAGE)).isEqualTo(9);
            assertThat(objects(
                            printed,
                            font -> font.getCOSName(COSName.TYPE) != null
                                    && COSName.FONT_DESC.equals(font.getCOSName(COSName.TYPE))))
                    .isEqualTo(printed.fonts().size());
        }
    }

    private static long streams(Printed printed, COSName subtype) {
        return objects(printed, one -> one instanceof COSStream && subtype.equals(one.getCOSName(COSName.SUBTYPE)));
    }

    private static long objects(Printed printed, Predicate<COSDictionary> kind) {
        COSDocument document = printed.document().getDocument();
        return document.getXrefTable().keySet().stream()
                .map(key -> document.getObjectFromPool(key).getObject())
                .filter(object -> object instanceof COSDictionary dictionary && kind.test(dictionary))
                .count();
    }

    @Test
    void thePhotographIsSeenAndItsCreditStandsUnderIt() throws IOException {
        BenchCard card = PhotoSamples.with(SampleCards.iteaCard(), PhotoSamples.LYING);
        try (Printed printed =
                Printed.of(out -> printer.benchCards(List.of(card), CardFormat.LARGE, PrintStyle.ENGLISH, out))) {
            assertThat(printed.text(0)).contains("Photo: A. Grower, CC BY 4.0").contains("Jun–Jul");
            BufferedImage page = printed.image(0, 100);
            assertThat(greens(page)).isGreaterThan(page.getWidth() * page.getHeight() / 12);
        }
    }

    private static int greens(BufferedImage page) {
        int greens = 0;
        for (int x = 0; x < page.getWidth(); x++) {
            for (int y = 0; y < page.getHeight(); y++) {
                int rgb = page.getRGB(x, y);
                if ((rgb >> 8 & 0xFF) > (rgb >> 16 & 0xFF) + 12 && (rgb >> 8 & 0xFF) > (rgb & 0xFF) + 12) {
                    greens++;
                }
            }
        }
        return greens;
    }

    @Test
    void aPhotographThatIsMissingIsRefusedWithItsPlant() {
        assertRefused(new Photo("none.jpg", "", ""), "photograph.missing");
    }

    @Test
    void aPhotographThatIsNoPictureIsRefusedWithItsPlant() {
        assertRefused(new Photo("broken.jpg", "", ""), "photograph.unreadable");
    }

    private void assertRefused(Photo photo, String key) {
        BenchCard card = PhotoSamples.with(SampleCards.iteaCard(), photo);
        assertThatThrownBy(() -> Printed.bytes(
                        out -> printer.benchCards(List.of(card), CardFormat.LARGE, PrintStyle.ENGLISH, out)))
                .isInstanceOfSatisfying(PrintRefused.class, refused -> {
                    assertThat(refused.problem().key()).isEqualTo(key);
                    assertThat(refused.problem().details())
                            .containsEntry("name", card.title().botanical().toString());
                });
    }

    @Test
    void thePageShowsThePhotographAndGoesWithoutOneThatIsMissing() {
        WebPages pages = WebPages.using(ContentPack.builtIn(), new SamplePhotos());
        assertThat(pages.plantPage(PhotoSamples.with(SampleSheets.iteaSheet(), PhotoSamples.LYING), PrintStyle.ENGLISH))
                .contains("src=\"/photo/lying.jpg\"")
                .contains("alt=\"Photograph of Itea virginica")
                .contains("Photo: A. Grower, CC BY 4.0");
        assertThat(pages.plantPage(
                        PhotoSamples.with(SampleSheets.iteaSheet(), new Photo("none.jpg", "", "")), PrintStyle.ENGLISH))
                .doesNotContain("/photo/");
    }

    // 1,480 dots are 89 to the inch on 420 mm; under 200 shows its dots (common practice, no source)
    @Test
    void aSignKeepsTheDotsThatItsPhotographNeeds() throws IOException {
        Printer large = Printer.using(ContentPack.builtIn(), new OnePhotograph(SamplePhotos.leaves(4000, 3000, "jpg")));
        List<BenchCard> cards = PhotoSamples.withPhotos(List.of(SampleCards.iteaCard()));
        assertThat(Findings.of(
                        large,
                        dry -> dry.benchCards(
                                cards, CardFormat.A3_WIDE, PrintStyle.ENGLISH, OutputStream.nullOutputStream())))
                .isEmpty();
        try (Printed sign = Printed.of(out -> large.benchCards(cards, CardFormat.A3_WIDE, PrintStyle.ENGLISH, out))) {
            assertThat(sign.pages()).isEqualTo(cards.size());
        }
    }

    /// The same for every name.
    private static final class OnePhotograph implements Photographs {
        private final byte[] jpeg;

        OnePhotograph(byte[] jpeg) {
            this.jpeg = jpeg;
        }

        @Override
        public Optional<byte[]> find(String file) {
            return Optional.of(jpeg);
        }

        @Override
        public Optional<Stamp> stamp(String file) {
            return Optional.of(new Stamp(jpeg.length, 0));
        }

        @Override
        public String where() {
            return "memory";
        }
    }
}
