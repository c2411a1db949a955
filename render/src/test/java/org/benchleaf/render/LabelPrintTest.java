package org.benchleaf.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import org.apache.pdfbox.text.TextPosition;
import org.benchleaf.content.ContentPack;
import org.benchleaf.content.StockPaper;
import org.benchleaf.render.page.Label;
import org.benchleaf.render.page.LabelRun;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LabelPrintTest {
    private static final int DPI = 300;
    private final StockPaper paper = ContentPack.builtIn().paper("letter-30");
    private final Printer printer = Printer.using(ContentPack.builtIn(), Photographs.NONE);

    private Printed print(List<Label> labels, LabelRun run) throws IOException {
        return Printed.of(out -> printer.labels(labels, run, PrintStyle.ENGLISH, out));
    }

    @Test
    void everyCodeLeadsToItsLiveLink() throws Exception {
        List<Label> labels = SampleCards.labels(30);
        try (Printed printed = print(labels, LabelRun.on(paper))) {
            BufferedImage sheet = printed.image(0, DPI);
            for (int cell = 0; cell < 30; cell++) {
                String read = Printed.decode(
                        sheet,
                        DPI,
                        paper.x(cell % 3),
                        paper.y(cell / 3),
                        paper.labelWidth() * 0.4,
                        paper.labelHeight());
                assertThat(read).isEqualTo(labels.get(cell).link().forCode());
            }
        }
    }

    @Test
    void anotherDecoderReadsThemToo(@TempDir Path folder) throws Exception {
        assumeThat(Files.isExecutable(Path.of("/usr/bin/zbarimg"))).isTrue();
        List<Label> labels = SampleCards.labels(30);
        try (Printed printed = print(labels, LabelRun.on(paper))) {
            Path picture = folder.resolve("sheet.png");
            ImageIO.write(printed.image(0, DPI), "png", picture.toFile());
            Process zbar = new ProcessBuilder("/usr/bin/zbarimg", "-q", "--raw", picture.toString())
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            List<String> read = zbar.inputReader().lines().toList();
            assertThat(zbar.waitFor(30, TimeUnit.SECONDS)).isTrue();
            assertThat(read)
                    .containsExactlyInAnyOrderElementsOf(
                            labels.stream().map(label -> label.link().forCode()).toList());
        }
    }

    @Test
    void wordsStandInTheirCellsWithinATwentiethOfAMillimetre() throws IOException {
        List<Double> offsets = new ArrayList<>();
        List<Label> same =
                java.util.Collections.nCopies(30, SampleCards.labels(1).getFirst());
        try (Printed printed = print(same, LabelRun.on(paper))) {
            assertThat(printed.widthMm(0)).isCloseTo(215.9, within(0.05));
            List<TextPosition> initials = printed.glyphs(0).stream()
                    .filter(glyph -> glyph.getUnicode().equals("I"))
                    .toList();
            assertThat(initials).hasSize(30);
            for (int cell = 0; cell < 30; cell++) {
                offsets.add(mm(initials.get(cell).getXDirAdj()) - paper.x(cell % 3));
                assertThat(mm(initials.get(cell).getYDirAdj()) - paper.y(cell / 3))
                        .isCloseTo(mm(initials.getFirst().getYDirAdj()) - paper.y(0), within(0.05));
            }
        }
        assertThat(offsets).allSatisfy(offset -> assertThat(offset).isCloseTo(offsets.getFirst(), within(0.05)));
    }

    private static double mm(double points) {
        return points * 25.4 / 72;
    }

    @Test
    void usedCellsStayEmptyOnTheFirstSheetOnly() throws IOException {
        LabelRun run = new LabelRun(paper, Set.of(1, 2, 3, 30), LabelRun.FillOrder.BY_ROW, 0, 0);
        try (Printed printed = print(SampleCards.labels(27), run)) {
            assertThat(printed.pages()).isEqualTo(2);
            assertThat(printed.text(0)).doesNotContain("T0027").contains("T0026");
            assertThat(printed.text(1)).contains("T0027");
            assertThat(topOf(printed, 0)).isGreaterThan(paper.y(1));
            assertThat(topOf(printed, 1)).isLessThan(paper.y(1));
        }
    }

    @Test
    void columnsAreFilledDownwardWhenAsked() throws IOException {
        LabelRun run = new LabelRun(paper, Set.of(), LabelRun.FillOrder.BY_COLUMN, 0, 0);
        try (Printed printed = print(SampleCards.labels(11), run)) {
            double eleventh = printed.glyphs(0).stream()
                    .mapToDouble(TextPosition::getXDirAdj)
                    .max()
                    .orElseThrow();
            assertThat(mm(eleventh)).isBetween(paper.x(1), paper.x(2));
        }
    }

    @Test
    void theCheckBarInTheWasteEdgeIsAHundredMillimetresLong() throws IOException {
        double top = LabelRun.checkBar(paper).orElseThrow();
        try (Printed plain = print(SampleCards.labels(1), LabelRun.on(paper));
                Printed checked =
                        print(SampleCards.labels(1), LabelRun.on(paper).withCheck())) {
            int dpi = 600;
            assertThat(inkAcross(plain.image(0, dpi), dpi, top, top + 2)).isZero();
            assertThat(inkAcross(checked.image(0, dpi), dpi, top, top + 2)).isCloseTo(100, within(0.15));
            assertThat(checked.text(0)).contains("100 mm");
        }
        StockPaper roll = ContentPack.builtIn().papers().stream()
                .filter(one -> one.cells() == 1)
                .findFirst()
                .orElseThrow();
        assertThatThrownBy(() -> LabelRun.on(roll).withCheck())
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no waste edge");
    }

    /// From the first ink to the last in a band of the page, in mm.
    private static double inkAcross(BufferedImage page, int dpi, double fromMm, double toMm) {
        int first = Integer.MAX_VALUE;
        int last = -1;
        for (int y = (int) (fromMm * dpi / 25.4); y <= (int) (toMm * dpi / 25.4); y++) {
            for (int x = 0; x < page.getWidth(); x++) {
                if ((page.getRGB(x, y) & 0xff) < 128) {
                    first = Math.min(first, x);
                    last = Math.max(last, x);
                }
            }
        }
        return last < 0 ? 0 : (last - first + 1) * 25.4 / dpi;
    }

    @Test
    void aNudgeMovesEverythingByItsMillimetres() throws IOException {
        LabelRun nudged = new LabelRun(paper, Set.of(), LabelRun.FillOrder.BY_ROW, 0.8, -0.5);
        try (Printed plain = print(SampleCards.labels(1), LabelRun.on(paper));
                Printed moved = print(SampleCards.labels(1), nudged)) {
            TextPosition before = plain.glyphs(0).getFirst();
            TextPosition after = moved.glyphs(0).getFirst();
            assertThat(mm(after.getXDirAdj() - before.getXDirAdj())).isCloseTo(0.8, within(0.05));
            assertThat(mm(after.getYDirAdj() - before.getYDirAdj())).isCloseTo(-0.5, within(0.05));
        }
    }

    @Test
    void aCodeTooSmallToReadIsRefused() {
        LabelRun tiny = LabelRun.on(ContentPack.builtIn().paper("letter-80"));
        assertThatThrownBy(() -> printer.labels(
                        SampleCards.labels(1), tiny, PrintStyle.ENGLISH, OutputStream.nullOutputStream()))
                .isInstanceOfSatisfying(PrintRefused.class, refused -> {
                    assertThat(refused.problem().key()).isEqualTo("print.code-too-small");
                    assertThat(refused.problem().details()).containsEntry("least", "0.42");
                });
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "letter-10",
                "letter-20",
                "letter-14",
                "letter-6",
                "letter-cards-10",
                "letter-cards-4",
                "a4-21",
                "a4-24",
                "a4-14",
                "a4-8"
            })
    void labelsFitEveryPaperThatHoldsACode(String key) throws IOException {
        try (Printed printed =
                print(SampleCards.labels(6), LabelRun.on(ContentPack.builtIn().paper(key)))) {
            assertThat(printed.text(0)).contains("Itea virginica");
        }
    }

    private static double topOf(Printed printed, int page) throws IOException {
        return mm(printed.glyphs(page).stream()
                .mapToDouble(TextPosition::getYDirAdj)
                .min()
                .orElseThrow());
    }
}
