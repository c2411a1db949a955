package org.benchleaf.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.TextPosition;
import org.benchleaf.content.ContentPack;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PressTest {
    private static final double MM = 25.4 / 72;
    private static final PressSettings TRIMMED =
            new PressSettings(PressSettings.USUAL_BLEED_MM, true, Calibration.NONE);
    private final Printer printer = Printer.using(ContentPack.builtIn(), Photographs.NONE);

    private Printed card(PressSettings press) throws IOException {
        return Printed.of(out -> printer.on(press)
                .benchCards(List.of(SampleCards.iteaCard()), CardFormat.LARGE, PrintStyle.ENGLISH, out));
    }

    @ParameterizedTest
    @EnumSource(CardFormat.class)
    void aTrimmedCardIsExactlyItsSizeAndBleedsThreeMillimetres(CardFormat format) throws IOException {
        try (Printed printed = Printed.of(
                out -> printer.on(TRIMMED).benchCards(SampleCards.cards(), format, PrintStyle.ENGLISH, out))) {
            for (int page = 0; page < printed.pages(); page++) {
                PDRectangle trim = printed.document().getPage(page).getTrimBox();
                PDRectangle bleed = printed.document().getPage(page).getBleedBox();
                PDRectangle media = printed.document().getPage(page).getMediaBox();
                assertThat(trim.getWidth() * MM).isCloseTo(format.widthMm(), within(0.05));
                assertThat(trim.getHeight() * MM).isCloseTo(format.heightMm(), within(0.05));
                assertThat(bleed.getWidth() * MM).isCloseTo(format.widthMm() + 6, within(0.05));
                assertThat((trim.getLowerLeftX() - bleed.getLowerLeftX()) * MM).isCloseTo(3, within(0.02));
                assertThat(media.getWidth() * MM).isCloseTo(format.widthMm() + 24, within(0.05));
            }
        }
    }

    @Test
    void wordsStandInTheTrimmedPageWhereTheyStandInThePlainOne() throws IOException {
        try (Printed plain = card(PressSettings.PLAIN);
                Printed trimmed = card(TRIMMED)) {
            TextPosition before = plain.glyphs(0).getFirst();
            TextPosition after = trimmed.glyphs(0).getFirst();
            assertThat((after.getXDirAdj() - before.getXDirAdj()) * MM).isCloseTo(12, within(0.05));
            assertThat((after.getYDirAdj() - before.getYDirAdj()) * MM).isCloseTo(12, within(0.05));
        }
    }

    @Test
    void onlyWhatIsCutStandsOnLargerPaper() {
        assertThatThrownBy(() -> printer.on(TRIMMED)
                        .plantSheets(
                                SampleSheets.sheets(),
                                SheetFormat.LETTER,
                                PrintStyle.ENGLISH,
                                OutputStream.nullOutputStream()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("cards, signs and labels");
    }

    @Test
    void aBarOfAHundredMillimetresStandsInTheWasteEdge() throws Exception {
        try (Printed printed = card(TRIMMED)) {
            var image = printed.image(0, 508); // twenty dots to the millimetre
            // the bar lies in the middle between paper edge and bleed: 4.5 mm above the lower edge
            int row = image.getHeight() - (int) (4.5 * 20);
            int first = -1;
            int last = -1;
            for (int x = 20 * 20; x < image.getWidth() - 20 * 20; x++) {
                boolean dark = false;
                for (int off = -3; off <= 3; off++) {
                    dark |= (image.getRGB(x, row + off) & 0xFF) < 0xA0;
                }
                if (dark) {
                    first = first < 0 ? x : first;
                    last = x;
                }
            }
            assertThat((last - first) / 20.0).isCloseTo(100, within(0.15));
            assertThat(printed.text(0)).contains("100 mm");
            assertThat(Structure.of(printed).ornament()).contains("100 mm");
            Vera.assertAccessibleAndArchivable(printed.bytes());
        }
    }

    @Test
    void aCalibratedPrinterMovesAndStretchesEverything() throws IOException {
        Calibration calibration = new Calibration(0.8, -0.5, 1.01, 0.99);
        try (Printed plain = card(PressSettings.PLAIN);
                Printed put = card(new PressSettings(0, false, calibration))) {
            for (int glyph : new int[] {0, plain.glyphs(0).size() - 1}) {
                TextPosition before = plain.glyphs(0).get(glyph);
                TextPosition after = put.glyphs(0).get(glyph);
                assertThat(after.getXDirAdj() * MM).isCloseTo(before.getXDirAdj() * MM * 1.01 + 0.8, within(0.05));
                assertThat(after.getYDirAdj() * MM).isCloseTo(before.getYDirAdj() * MM * 0.99 - 0.5, within(0.05));
            }
        }
    }

    @Test
    void whatIsMeasuredOnTheCalibrationPageIsPutRight() {
        // a printer that pulls 0.8 mm left, 0.5 mm down, and prints 0.4 % too small across
        double stretch = 0.996;
        Calibration found = Calibration.measured(20 * stretch - 0.8, 20.5, 150 * stretch, 200);
        for (double place : new double[] {0, 20, 100, 200}) {
            double printed = (place * found.scaleX() + found.rightMm()) * stretch - 0.8;
            assertThat(printed).isCloseTo(place, within(0.02));
        }
        assertThat(found.downMm()).isEqualTo(-0.5);
        assertThat(Calibration.measured(20, 20, 150, 200)).isEqualTo(Calibration.NONE);
    }

    @Test
    void aPrinterThatIsFarOffIsBroken() {
        assertThatThrownBy(() -> Calibration.measured(40, 20, 150, 200)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Calibration.measured(20, 20, 150, 260)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Calibration.measured(20, 20, 0, 200)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void theCalibrationPageSaysWhatToMeasure() throws Exception {
        try (Printed printed =
                Printed.of(out -> printer.calibration(SheetFormat.A4, "label printer", PrintStyle.ENGLISH, out))) {
            assertThat(printed.text(0)).contains("What does this printer do?", "--printer label printer");
            Vera.assertAccessibleAndArchivable(printed.bytes());
        }
    }
}
