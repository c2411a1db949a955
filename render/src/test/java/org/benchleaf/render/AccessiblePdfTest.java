package org.benchleaf.render;

import org.benchleaf.content.ContentPack;
import org.benchleaf.render.page.Comparison;
import org.benchleaf.render.page.LabelRun;
import org.junit.jupiter.api.Test;

/// ISO 14289-1 (PDF/UA-1) and ISO 19005-2 (PDF/A-2a), as far as veraPDF can check them; whether a text alternative
/// says enough is for people to judge.
class AccessiblePdfTest {
    private final Printer printer = Printer.using(ContentPack.builtIn(), new SamplePhotos());

    @Test
    void cardsKeepToBothStandards() throws Exception {
        Vera.assertAccessibleAndArchivable(Printed.bytes(out -> printer.benchCards(
                PhotoSamples.withPhotos(SampleCards.cards()), CardFormat.LARGE, PrintStyle.ENGLISH, out)));
    }

    @Test
    void sheetsKeepToBothStandards() throws Exception {
        Vera.assertAccessibleAndArchivable(Printed.bytes(out -> printer.plantSheets(
                PhotoSamples.sheetsWithPhotos(SampleSheets.sheets()), SheetFormat.LETTER, PrintStyle.ENGLISH, out)));
    }

    @Test
    void labelsKeepToBothStandards() throws Exception {
        LabelRun run = LabelRun.on(ContentPack.builtIn().paper("letter-30"));
        Vera.assertAccessibleAndArchivable(
                Printed.bytes(out -> printer.labels(SampleCards.labels(40), run, PrintStyle.ENGLISH, out)));
    }

    @Test
    void documentsOfManyPlantsKeepToBothStandards() throws Exception {
        PrintStyle style = PrintStyle.ENGLISH;
        Comparison sideBySide = new Comparison(SampleSheets.sheets().subList(0, 3), Samples.SHOP);
        Vera.assertAccessibleAndArchivable(
                Printed.bytes(out -> printer.comparison(sideBySide, SheetFormat.LETTER, style, out)));
        Vera.assertAccessibleAndArchivable(Printed.bytes(
                out -> printer.availability(DocumentSamples.availability(60), SheetFormat.LETTER, style, out)));
        Vera.assertAccessibleAndArchivable(
                Printed.bytes(out -> printer.bulletin(DocumentSamples.bulletin(), SheetFormat.A4, style, out)));
        Vera.assertAccessibleAndArchivable(
                Printed.bytes(out -> printer.listPack(DocumentSamples.pack(), SheetFormat.LETTER, style, out)));
    }
}
