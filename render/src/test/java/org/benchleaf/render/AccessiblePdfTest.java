package org.benchleaf.render;

import org.benchleaf.content.ContentPack;
import org.benchleaf.render.page.LabelRun;
import org.junit.jupiter.api.Test;

/// ISO 14289-1 (PDF/UA-1) and ISO 19005-2 (PDF/A-2a), as far as veraPDF can check them; whether a text alternative
/// says enough is for people to judge.
class AccessiblePdfTest {
    private final Printer printer = Printer.using(ContentPack.builtIn(), new SamplePhotos());

    @Test
    void cardsKeepToBothStandards() throws Exception {
        Vera.assertAccessibleAndArchivable(Printed.bytes(out -> printer.benchCards(
                PhotoSamples.withPhotos(Samples.cards()), CardFormat.LARGE, PrintStyle.ENGLISH, out)));
    }

    @Test
    void sheetsKeepToBothStandards() throws Exception {
        Vera.assertAccessibleAndArchivable(Printed.bytes(out -> printer.plantSheets(
                PhotoSamples.sheetsWithPhotos(Samples.sheets()), SheetFormat.LETTER, PrintStyle.ENGLISH, out)));
    }

    @Test
    void labelsKeepToBothStandards() throws Exception {
        LabelRun run = LabelRun.on(ContentPack.builtIn().paper("letter-30"));
        Vera.assertAccessibleAndArchivable(
                Printed.bytes(out -> printer.labels(Samples.labels(40), run, PrintStyle.ENGLISH, out)));
    }
}
