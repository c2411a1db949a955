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
import org.benchleaf.content.StockPaper;
import org.benchleaf.render.page.BenchCard;
import org.benchleaf.render.page.Label;
import org.benchleaf.render.page.LabelRun;
import org.benchleaf.shared.code.DigitalLink;
import org.benchleaf.shared.code.Gtin;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/// A run of pages as a printer would see it: each page becomes dots by another program (pdftoppm of Poppler), and every
/// code on it is read back by another decoder (zbarimg). It looks at the page as a whole; where it loses a code among
/// ninety finders of a sheet of thirty, it is shown that label alone, as a telephone is held to it. A few pages each
/// time the tests run; 300 pages when `BENCHLEAF_DECODE_RUN` is `whole`, which takes about ten minutes.
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
    /// @param expected what the codes say, page by page in the order of their cells
    /// @param paper on which they stand
    private void assertAllRead(
            String name, int dpi, int pages, Print print, List<String> expected, Optional<StockPaper> paper)
            throws Exception {
        assumeTrue(Files.isExecutable(DOTS) && Files.isExecutable(DECODER), "both programs are there");
        Path pdf = folder.resolve(name + ".pdf");
        try (OutputStream out = Files.newOutputStream(pdf)) {
            assertThat(print.to(out)).isEqualTo(pages);
        }
        List<String> read = new ArrayList<>();
        int alone = 0;
        int onPage = expected.size() / pages;
        for (int from = 1; from <= pages; from += AT_ONCE) {
            Path dots = Files.createDirectory(folder.resolve(name + "-" + from));
            int to = Math.min(pages, from + AT_ONCE - 1);
            run(DOTS.toString(), "-r", "" + dpi, "-gray", "-f", "" + from, "-l", "" + to, pdf.toString(), dots + "/p");
            try (Stream<Path> rasters = Files.list(dots)) {
                int page = from;
                for (Path raster : rasters.sorted().toList()) {
                    List<String> found = decode(raster);
                    Files.delete(raster);
                    List<String> lost = new ArrayList<>(expected.subList((page - 1) * onPage, page * onPage));
                    lost.removeAll(found);
                    for (String code : paper.isPresent() ? lost : List.<String>of()) {
                        found.addAll(decode(cut(pdf, dpi, page, paper.get(), expected.indexOf(code) % onPage)));
                        alone++;
                    }
                    read.addAll(found);
                    page++;
                }
            }
        }
        assertThat(read).as("%s at %d dpi", name, dpi).containsExactlyInAnyOrderElementsOf(expected);
        if (WHOLE) {
            System.out.printf(
                    "%s, %d dpi: %d pages, %d codes, all read, %d of them alone%n",
                    name, dpi, pages, read.size(), alone);
        }
    }

    private static List<String> decode(Path raster) throws IOException, InterruptedException {
        return new ArrayList<>(
                run(DECODER.toString(), "-q", "--raw", "-Sdisable", "-Sqrcode.enable", raster.toString()));
    }

    /// One label of a sheet.
    ///
    /// @param cell from 0, by rows
    private Path cut(Path pdf, int dpi, int page, StockPaper paper, int cell) throws IOException, InterruptedException {
        Path label = folder.resolve("label");
        run(
                DOTS.toString(),
                "-r",
                "" + dpi,
                "-gray",
                "-singlefile",
                "-f",
                "" + page,
                "-l",
                "" + page,
                "-x",
                dots(paper.x(cell % paper.columns()), dpi),
                "-y",
                dots(paper.y(cell / paper.columns()), dpi),
                "-W",
                dots(paper.labelWidth(), dpi),
                "-H",
                dots(paper.labelHeight(), dpi),
                pdf.toString(),
                label.toString());
        return folder.resolve("label.pgm");
    }

    private static String dots(double mm, int dpi) {
        return Long.toString(Math.round(mm / 25.4 * dpi));
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
                labels.stream().map(label -> label.link().forCode()).toList(),
                Optional.of(run.paper()));
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
                labels.stream().map(label -> label.link().forCode()).toList(),
                Optional.empty());
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
                        .toList(),
                Optional.empty());
    }

    /// Numbers of GS1's prefix for examples, 952 (from memory).
    private static BenchCard traded(BenchCard card, int n) {
        String body = "952123%06d".formatted(n);
        Gtin gtin = new Gtin(body + Gtin.checkDigit(body));
        return card.withTrade(new DigitalLink(Samples.BASE, gtin, Optional.empty()));
    }
}
