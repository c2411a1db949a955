package org.benchleaf.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchleaf.content.ContentPack;
import org.benchleaf.render.page.BenchCard;
import org.benchleaf.render.page.Label;
import org.benchleaf.render.page.LabelRun;
import org.benchleaf.shared.code.DigitalLink;
import org.benchleaf.shared.code.Gtin;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/// A run of pages as a printer would see it: each page becomes dots by another program (pdftoppm of Poppler), and every
/// code on it is read back by another decoder (zbarimg). A few pages each time the tests run; 300 pages when
/// `BENCHLEAF_DECODE_RUN` is `whole`, which takes the better part of an hour.
class DecodeRunTest {
    private static final Path DOTS = Path.of("/usr/bin/pdftoppm");
    private static final Path DECODER = Path.of("/usr/bin/zbarimg");
    private static final boolean WHOLE = "whole".equals(System.getenv("BENCHLEAF_DECODE_RUN"));
    private static final int AT_ONCE = 4;

    private final Printer printer = Printer.using(ContentPack.builtIn(), Photographs.NONE);

    @TempDir
    private Path folder = Path.of("");

    private static int pages(int whole, int few) {
        return WHOLE ? whole : few;
    }

    /// Prints, turns to dots, reads.
    ///
    /// @param expected what the codes say, in any order
    private void assertAllRead(String name, int dpi, int pages, Print print, List<String> expected) throws Exception {
        assumeTrue(Files.isExecutable(DOTS) && Files.isExecutable(DECODER), "both programs are there");
        Path pdf = folder.resolve(name + ".pdf");
        try (OutputStream out = Files.newOutputStream(pdf)) {
            assertThat(print.to(out)).isEqualTo(pages);
        }
        List<String> read = new ArrayList<>();
        for (int from = 1; from <= pages; from += AT_ONCE) {
            Path dots = Files.createDirectory(folder.resolve(name + "-" + from));
            int to = Math.min(pages, from + AT_ONCE - 1);
            run(DOTS.toString(), "-r", "" + dpi, "-gray", "-f", "" + from, "-l", "" + to, pdf.toString(), dots + "/p");
            try (Stream<Path> rasters = Files.list(dots)) {
                for (Path raster : rasters.sorted().toList()) {
                    read.addAll(
                            run(DECODER.toString(), "-q", "--raw", "-Sdisable", "-Sqrcode.enable", raster.toString()));
                    Files.delete(raster);
                }
            }
        }
        assertThat(read).as("%s at %d dpi", name, dpi).containsExactlyInAnyOrderElementsOf(expected);
        if (WHOLE) {
            System.out.printf("%s, %d dpi: %d pages, %d codes, all read%n", name, dpi, pages, read.size());
        }
    }

    private interface Print {
        int to(OutputStream out) throws IOException;
    }

    private static List<String> run(String... command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        List<String> lines = process.inputReader().lines().toList();
        assertThat(process.waitFor(10, TimeUnit.MINUTES)).isTrue();
        return lines;
    }

    @ParameterizedTest
    @ValueSource(ints = {203, 300, 600})
    void everyCodeOnSheetsOfLabelsIsRead(int dpi) throws Exception {
        int pages = pages(100, dpi == 600 ? 1 : 2);
        List<Label> labels = SampleCards.labels(pages * 30);
        LabelRun run = LabelRun.on(ContentPack.builtIn().paper("letter-30")).with(dpi, true, false);
        assertAllRead(
                "labels",
                dpi,
                pages,
                out -> printer.labels(labels, run, PrintStyle.ENGLISH, out),
                labels.stream().map(label -> label.link().forCode()).toList());
    }

    @ParameterizedTest
    @ValueSource(ints = {203, 300, 600})
    void everyCodeOnRollLabelsIsRead(int dpi) throws Exception {
        int pages = pages(100, 5);
        List<Label> labels = SampleCards.labels(pages);
        LabelRun run = LabelRun.on(ContentPack.builtIn().paper("roll-2x1")).with(dpi, true, false);
        assertAllRead(
                "rolls",
                dpi,
                pages,
                out -> printer.labels(labels, run, PrintStyle.ENGLISH, out),
                labels.stream().map(label -> label.link().forCode()).toList());
    }

    @ParameterizedTest
    @ValueSource(ints = {203, 300, 600})
    void everyCodeOnCardsIsReadTradeNumbersToo(int dpi) throws Exception {
        int pages = pages(100, 4);
        List<BenchCard> cards = IntStream.range(0, pages)
                .mapToObj(n -> n % 2 == 0 ? SampleCards.iteaCard() : traded(SampleCards.yewCard(), n))
                .toList();
        assertAllRead(
                "cards",
                dpi,
                pages,
                out -> printer.benchCards(cards, CardFormat.SMALL, PrintStyle.ENGLISH, out),
                cards.stream()
                        .map(card -> card.trade()
                                .map(DigitalLink::toString)
                                .orElseGet(() -> card.link().forCode()))
                        .toList());
    }

    /// Numbers of GS1's prefix for examples, 952 (from memory).
    private static BenchCard traded(BenchCard card, int n) {
        String body = "952123%06d".formatted(n);
        Gtin gtin = new Gtin(body + Gtin.checkDigit(body));
        return card.withTrade(new DigitalLink(Samples.BASE, gtin, Optional.empty()));
    }
}
