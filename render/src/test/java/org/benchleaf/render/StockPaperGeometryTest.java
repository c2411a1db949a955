package org.benchleaf.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.benchleaf.content.ContentPack;
import org.benchleaf.content.StockPaper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/// label-sheets.csv: layouts of the label trade without their makers' names; which of them were seen and which are from
/// memory stands in its column `status`. Left + (columns - 1) x pitch + width + right margin closes in every row.
class StockPaperGeometryTest {
    private static final double TOLERANCE_MM = 0.05;

    @ParameterizedTest
    @CsvFileSource(resources = "/check-values/label-sheets.csv", numLinesToSkip = 1)
    void everyCellOfEveryPaperStandsInItsPlace(
            String key,
            String sheet,
            int columns,
            int rows,
            String label,
            double top,
            double left,
            double pitchX,
            double pitchY)
            throws IOException {
        double unit = sheet.endsWith("in") ? 25.4 : 1;
        String[] size = label.split("x", -1);
        StockPaper paper = ContentPack.builtIn().paper(key);
        Printer printer = Printer.using(ContentPack.builtIn(), Photographs.NONE);
        try (Printed printed = Printed.of(out -> printer.proof(paper, PrintStyle.ENGLISH, out))) {
            String[] page = sheet.split("[x ]", -1);
            assertThat(printed.widthMm(0)).isCloseTo(Double.parseDouble(page[0]) * unit, within(TOLERANCE_MM));
            assertThat(printed.heightMm(0)).isCloseTo(Double.parseDouble(page[1]) * unit, within(TOLERANCE_MM));
            List<double[]> cells = outlines(printed);
            assertThat(cells).hasSize(columns * rows);
            for (int cell = 0; cell < cells.size(); cell++) {
                double[] drawn = cells.get(cell);
                assertThat(drawn[0]).isCloseTo((left + cell % columns * pitchX) * unit, within(TOLERANCE_MM));
                assertThat(drawn[1]).isCloseTo((top + cell / columns * pitchY) * unit, within(TOLERANCE_MM));
                assertThat(drawn[2]).isCloseTo(Double.parseDouble(size[0]) * unit, within(TOLERANCE_MM));
                assertThat(drawn[3]).isCloseTo(Double.parseDouble(size[1]) * unit, within(TOLERANCE_MM));
            }
        }
    }

    /// Closed outlines drawn on the first page in mm from its top left: x, y, width, height.
    static List<double[]> outlines(Printed printed) throws IOException {
        PDPage page = printed.document().getPage(0);
        double height = page.getMediaBox().getHeight();
        List<double[]> found = new ArrayList<>();
        new PDFGraphicsStreamEngine(page) {
            private final List<Point2D> points = new ArrayList<>();
            private double[] closed = {};

            @Override
            public void moveTo(float x, float y) {
                points.clear();
                points.add(new Point2D.Float(x, y));
            }

            @Override
            public void lineTo(float x, float y) {
                points.add(new Point2D.Float(x, y));
            }

            @Override
            public void closePath() {
                double x = points.stream().mapToDouble(Point2D::getX).min().orElseThrow();
                double x2 = points.stream().mapToDouble(Point2D::getX).max().orElseThrow();
                double y = points.stream().mapToDouble(Point2D::getY).min().orElseThrow();
                double y2 = points.stream().mapToDouble(Point2D::getY).max().orElseThrow();
                double mm = 25.4 / 72;
                closed = new double[] {x * mm, (height - y2) * mm, (x2 - x) * mm, (y2 - y) * mm};
            }

            @Override
            public Point2D getCurrentPoint() {
                return points.getLast();
            }

            @Override
            public void appendRectangle(Point2D a, Point2D b, Point2D c, Point2D d) {}

            @Override
            public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {}

            @Override
            public void drawImage(PDImage image) {}

            @Override
            public void clip(int rule) {}

            @Override
            public void endPath() {
                closed = new double[0]; // it was there to clip
            }

            @Override
            public void strokePath() {
                if (closed.length > 0) {
                    found.add(closed);
                    closed = new double[0];
                }
            }

            @Override
            public void fillPath(int rule) {}

            @Override
            public void fillAndStrokePath(int rule) {}

            @Override
            public void shadingFill(COSName name) {}
        }.processPage(page);
        return found;
    }
}
