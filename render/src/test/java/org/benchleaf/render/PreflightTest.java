package org.benchleaf.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.content.ContentPack;
import org.benchleaf.content.Palette;
import org.benchleaf.render.page.BenchCard;
import org.benchleaf.render.page.Label;
import org.benchleaf.render.page.LabelRun;
import org.benchleaf.render.page.PlantTitle;
import org.benchleaf.shared.color.Srgb;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PreflightTest {
    private static final OutputStream NOWHERE = OutputStream.nullOutputStream();
    private final Printer printer = Printer.using(ContentPack.builtIn(), new SamplePhotos());

    private static List<PrintFinding> check(Printer printer, List<BenchCard> cards) {
        return Findings.of(printer, dry -> dry.benchCards(cards, CardFormat.LARGE, PrintStyle.ENGLISH, NOWHERE));
    }

    @Test
    void goodCardsLeaveNoFindings() {
        assertThat(check(printer, SampleCards.cards())).isEmpty();
    }

    @Test
    void everyPageIsCheckedAndEachFindingNamesPlantAndField() {
        List<BenchCard> cards = List.of(
                SampleCards.iteaCard(), titled("sweetspire 花"), titled("word ".repeat(60)), SampleCards.iteaCard());
        assertThat(check(printer, cards))
                .extracting(
                        PrintFinding::subject,
                        PrintFinding::field,
                        found -> found.problem().key())
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(
                                "Itea virginica 'Henry's Garnet'", "common name", "print.glyph"),
                        org.assertj.core.groups.Tuple.tuple(
                                "Itea virginica 'Henry's Garnet'", "common name", "print.overflow"));
    }

    // WCAG 2.x: #777777 on white has 4.48, #767676 has 4.54 (wcag-contrast.csv)
    @Test
    void wordsThatHardlyStandOutAreFound() {
        Palette pale = new Palette(
                "pale",
                Map.of(
                        "ink", new Srgb(0, 0, 0),
                        "soft", new Srgb(0x77, 0x77, 0x77),
                        "accent", new Srgb(0x76, 0x76, 0x76),
                        "quiet", new Srgb(0x60, 0x60, 0x60)));
        Printer own = Printer.using(ContentPack.builtIn().withPalette(pale), Photographs.NONE);
        assertThat(check(own, List.of(SampleCards.iteaCard())))
                .extracting(
                        PrintFinding::field,
                        found -> found.problem().key(),
                        found -> found.problem().details().get("contrast"))
                .containsExactly(org.assertj.core.groups.Tuple.tuple("color", "print.contrast", "4.4"));
    }

    @Test
    void wordsOfASheetAreHeldAgainstWhatLiesUnderThem(@TempDir Path shop) throws IOException {
        Path style = shop.resolve("styles/sheet.css");
        Files.createDirectories(style.getParent());
        Files.writeString(
                style,
                ContentPack.builtIn().text("styles/sheet.css")
                        + ".sheet-common { color: #777777 } .sheet-why { color: #767676 }"
                        + ".sheet-call { color: #262a26; background-color: #404540 }");
        Printer own = Printer.using(ContentPack.withShopFolder(shop), Photographs.NONE);
        assertThat(Findings.of(
                        own,
                        dry -> dry.plantSheets(
                                SampleSheets.sheets().subList(0, 1), SheetFormat.LETTER, PrintStyle.ENGLISH, NOWHERE)))
                .extracting(
                        found -> found.problem().key(),
                        found -> found.problem().details().get("contrast"))
                .containsExactlyInAnyOrder(
                        org.assertj.core.groups.Tuple.tuple("print.contrast", "4.4"),
                        org.assertj.core.groups.Tuple.tuple("print.contrast", "1.4"));
    }

    @Test
    void aPhotographTooCoarseForItsSizeIsFound() {
        Photographs coarse = new CoarsePhotos();
        List<PrintFinding> found = check(
                Printer.using(ContentPack.builtIn(), coarse),
                List.of(PhotoSamples.with(SampleCards.iteaCard(), PhotoSamples.LYING)));
        assertThat(found).hasSize(1);
        assertThat(found.getFirst().field()).isEqualTo("photograph");
        assertThat(found.getFirst().problem().key()).isEqualTo("print.photo-coarse");
        assertThat(Integer.parseInt(found.getFirst().problem().details().get("pixels")))
                .isBetween(300, 700);
    }

    @Test
    void aMissingPhotographIsFound() {
        List<PrintFinding> found = check(
                Printer.using(ContentPack.builtIn(), Photographs.NONE),
                List.of(PhotoSamples.with(SampleCards.iteaCard(), PhotoSamples.LYING)));
        assertThat(found).extracting(PrintFinding::field).containsExactly("photograph");
    }

    @Test
    void aWatchThatLetsPassGetsAllOtherPages() throws IOException {
        List<PrintRefused> refused = new ArrayList<>();
        List<BenchCard> cards = new ArrayList<>();
        for (int n = 0; n < 12; n++) {
            cards.add(n % 5 == 1 ? titled("sweetspire 花") : SampleCards.iteaCard());
        }
        try (Printed printed = Printed.of(
                out -> printer.watchedBy(refused::add).benchCards(cards, CardFormat.LARGE, PrintStyle.ENGLISH, out))) {
            assertThat(printed.pages()).isEqualTo(9);
            assertThat(refused).hasSize(3);
        }
    }

    @Test
    void aLabelThatCannotBePrintedLeavesItsCellToTheNext() throws IOException {
        List<PrintRefused> refused = new ArrayList<>();
        List<Label> labels = new ArrayList<>(SampleCards.labels(31));
        labels.set(
                4,
                new Label(
                        PlantTitle.of(Samples.ITEA, "花"),
                        labels.get(4).size(),
                        labels.get(4).form(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        labels.get(4).link()));
        LabelRun run = LabelRun.on(ContentPack.builtIn().paper("letter-30"));
        try (Printed printed =
                Printed.of(out -> printer.watchedBy(refused::add).labels(labels, run, PrintStyle.ENGLISH, out))) {
            assertThat(printed.pages()).isEqualTo(1);
            assertThat(printed.text(0)).contains("T0031").doesNotContain("T0005");
            assertThat(refused).hasSize(1);
        }
    }

    @Test
    void whenNoPageIsLeftNothingIsPrinted() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        assertThatThrownBy(() -> printer.watchedBy(refusal -> {})
                        .benchCards(List.of(titled("花")), CardFormat.LARGE, PrintStyle.ENGLISH, out))
                .isInstanceOf(PrintRefused.class);
        assertThat(out.size()).isZero();
    }

    private static BenchCard titled(String common) {
        BenchCard card = SampleCards.iteaCard();
        return new BenchCard(
                PlantTitle.of(Samples.ITEA, common),
                Optional.empty(),
                card.exposure(),
                card.waterNeed(),
                card.moisture(),
                card.hardiness(),
                card.height(),
                card.spread(),
                card.year(),
                card.cautions(),
                card.notices(),
                card.stockSize(),
                card.form(),
                card.price(),
                card.link(),
                card.shop(),
                Optional.empty());
    }
}
