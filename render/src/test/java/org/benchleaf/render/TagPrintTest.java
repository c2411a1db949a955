package org.benchleaf.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import org.benchleaf.content.ContentPack;
import org.benchleaf.render.page.Label;
import org.benchleaf.render.page.LabelRun;
import org.benchleaf.shared.code.Gtin;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// Tags for pots and branches, n-up and from roll printers. Codes are read by zbar, which shares nothing with what drew
/// them.
class TagPrintTest {
    private final Printer printer = Printer.using(ContentPack.builtIn(), Photographs.NONE);

    private static LabelRun run(String paper, int dpi, boolean bars) {
        return LabelRun.on(ContentPack.builtIn().paper(paper)).with(dpi, true, bars);
    }

    private static Label withGtin(Label label, String gtin) {
        return new Label(
                label.title(),
                label.size(),
                label.form(),
                label.place(),
                label.lot(),
                label.price(),
                label.pounds(),
                label.link(),
                Gtin.read(gtin).toOptional(),
                Optional.empty());
    }

    @ParameterizedTest
    @CsvSource({"roll-2x1, 203", "roll-2x1, 300", "roll-3x2, 203", "roll-6x4, 300", "roll-loop, 203", "roll-loop, 300"})
    void aRollPrinterGetsDotsThatAnotherDecoderReads(String paper, int dpi, @TempDir Path folder) throws Exception {
        List<Label> labels = SampleCards.labels(3);
        List<byte[]> pictures = new ArrayList<>();
        printer.labelPictures(labels, run(paper, dpi, false), PrintStyle.ENGLISH, pictures::add);
        assertThat(pictures).hasSize(3);
        var stock = ContentPack.builtIn().paper(paper);
        for (int at = 0; at < 3; at++) {
            BufferedImage image = ImageIO.read(new ByteArrayInputStream(pictures.get(at)));
            assertThat(image.getWidth()).isEqualTo((int) Math.round(stock.sheetWidth() / 25.4 * dpi));
            assertThat(image.getHeight()).isEqualTo((int) Math.round(stock.sheetHeight() / 25.4 * dpi));
            assertThat(image.getColorModel().getPixelSize()).isEqualTo(1);
            assertThat(zbar(pictures.get(at), folder))
                    .containsExactly(labels.get(at).link().forCode());
        }
    }

    @ParameterizedTest
    @CsvSource({"roll-2x1, 203", "tags-stake-32, 300", "tags-loop-10, 300", "roll-stake, 300"})
    void tagsArePrintedAsPdfWithCodesThatAreRead(String paper, int dpi, @TempDir Path folder) throws Exception {
        List<Label> labels = SampleCards.labels(4);
        try (Printed printed =
                Printed.of(out -> printer.labels(labels, run(paper, dpi, false), PrintStyle.ENGLISH, out))) {
            List<String> read = new ArrayList<>();
            for (int page = 0; page < printed.pages(); page++) {
                Path picture = folder.resolve("page-" + page + ".png");
                ImageIO.write(printed.image(page, 600), "png", picture.toFile());
                read.addAll(zbar(picture));
            }
            assertThat(read)
                    .containsExactlyInAnyOrderElementsOf(
                            labels.stream().map(label -> label.link().forCode()).toList());
        }
    }

    @ParameterizedTest
    @CsvSource({"5012345678900, 203", "5012345678900, 300", "036000241457, 203", "036000241457, 300"})
    void barsOfATillAreRead(String gtin, int dpi, @TempDir Path folder) throws Exception {
        List<byte[]> pictures = new ArrayList<>();
        Label label = withGtin(SampleCards.labels(1).getFirst(), gtin);
        printer.labelPictures(List.of(label), run("roll-6x4", dpi, true), PrintStyle.ENGLISH, pictures::add);
        // zbar tells the bars of UPC-A as EAN-13 with a zero before, which they are
        assertThat(zbar(pictures.getFirst(), folder))
                .containsExactlyInAnyOrder(label.link().forCode(), gtin.length() == 12 ? "0" + gtin : gtin);
    }

    @Test
    void barsThatFindNoRoomAndNumbersOfCasesAreRefused() {
        Label label = SampleCards.labels(1).getFirst();
        for (Label bad : List.of(withGtin(label, "5012345678900"), withGtin(label, "10036000241454"))) {
            assertThatThrownBy(() -> printer.labels(
                            List.of(bad),
                            run("roll-2x1", 300, true),
                            PrintStyle.ENGLISH,
                            OutputStream.nullOutputStream()))
                    .isInstanceOfSatisfying(
                            PrintRefused.class,
                            refused -> assertThat(refused.problem().details()).containsEntry("field", "bars"));
        }
    }

    @Test
    void aLabelWithoutANumberHasNoBars() throws IOException {
        try (Printed printed = Printed.of(
                out -> printer.labels(SampleCards.labels(1), run("roll-3x2", 300, true), PrintStyle.ENGLISH, out))) {
            assertThat(printed.text(0)).contains("Itea virginica");
        }
    }

    private static List<String> zbar(byte[] picture, Path folder) throws Exception {
        // a scanner sees paper around the label
        BufferedImage label = ImageIO.read(new ByteArrayInputStream(picture));
        BufferedImage seen =
                new BufferedImage(label.getWidth() + 80, label.getHeight() + 80, BufferedImage.TYPE_BYTE_GRAY);
        var graphics = seen.createGraphics();
        graphics.setColor(java.awt.Color.WHITE);
        graphics.fillRect(0, 0, seen.getWidth(), seen.getHeight());
        graphics.drawImage(label, 40, 40, null);
        graphics.dispose();
        Path file = Files.createTempFile(folder, "label", ".png");
        ImageIO.write(seen, "png", file.toFile());
        return zbar(file);
    }

    private static List<String> zbar(Path picture) throws Exception {
        assumeThat(Files.isExecutable(Path.of("/usr/bin/zbarimg"))).isTrue();
        Process zbar = new ProcessBuilder("/usr/bin/zbarimg", "-q", "--raw", picture.toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        List<String> read = zbar.inputReader().lines().toList();
        assertThat(zbar.waitFor(30, TimeUnit.SECONDS)).isTrue();
        return read;
    }
}
