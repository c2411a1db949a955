package org.benchleaf.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.benchleaf.content.Wording;
import org.benchleaf.render.figure.Figure;
import org.benchleaf.render.figure.Ink;
import org.benchleaf.render.figure.Mark;
import org.benchleaf.render.figure.Path;
import org.benchleaf.render.pdf.FigureDrawing;
import org.benchleaf.render.pdf.PrintPage;

/// A page to measure with a ruler: two lines at known places and two bars of known length.
final class CalibrationPage {
    /// From the paper's edges to the lines.
    static final double LINE_MM = 20;

    /// Length of the level bar.
    static final double WIDE_MM = 150;

    /// Length of the upright bar.
    static final double TALL_MM = 200;

    private static final double POINT = 72 / 25.4;
    private static final double HAIR = 0.3;

    private CalibrationPage() {}

    static PrintPage of(SheetFormat format, String printer, SheetTemplates templates, Wording words) {
        Map<String, Object> model = Map.of(
                "title", words.text("calibration.title"),
                "heading", words.text("calibration.heading"),
                "steps",
                        List.of(
                                words.text("calibration.print"),
                                words.text("calibration.left"),
                                words.text("calibration.top"),
                                words.text("calibration.wide"),
                                words.text("calibration.tall"),
                                words.text("calibration.then", Map.of("printer", printer))),
                "width", format.widthMm(),
                "height", format.heightMm(),
                "language", words.language().getLanguage());
        Figure figure = new Figure(
                format.widthMm() * POINT,
                format.heightMm() * POINT,
                marks(format),
                words.text("calibration.title"),
                words.text("calibration.alternative"));
        return new PrintPage(
                words.text("calibration.title"),
                List.of(() -> templates.fill("calibration", model)),
                Map.of("figure:rules", new FigureDrawing(figure)));
    }

    private static List<Mark> marks(SheetFormat format) {
        List<Mark> marks = new ArrayList<>();
        Ink ink = Ink.Role.TEXT;
        // the lines whose distance from the edges is measured
        line(marks, ink, LINE_MM, 5, LINE_MM, format.heightMm() - 5);
        line(marks, ink, 5, LINE_MM, format.widthMm() - 5, LINE_MM);
        bar(marks, ink, true);
        bar(marks, ink, false);
        label(marks, "A", LINE_MM + 1, 12);
        label(marks, "B", 8, LINE_MM + 5);
        label(marks, "C  " + mm(WIDE_MM), 40 + WIDE_MM / 2 - 10, 34);
        label(marks, "D  " + mm(TALL_MM), 34, 50 + TALL_MM / 2);
        return marks;
    }

    /// A bar with a tick every 10 mm.
    private static void bar(List<Mark> marks, Ink ink, boolean level) {
        double length = level ? WIDE_MM : TALL_MM;
        double start = level ? 40 : 50;
        double at = level ? 40 : 30;
        if (level) {
            line(marks, ink, start, at, start + length, at);
        } else {
            line(marks, ink, at, start, at, start + length);
        }
        for (double along = 0; along <= length + 0.01; along += 10) {
            double tick = along == 0 || along > length - 0.01 ? 4 : 2;
            if (level) {
                line(marks, ink, start + along, at - tick, start + along, at);
            } else {
                line(marks, ink, at - tick, start + along, at, start + along);
            }
        }
    }

    private static void line(List<Mark> marks, Ink ink, double x1, double y1, double x2, double y2) {
        marks.add(new Mark.Line(Path.line(x1 * POINT, y1 * POINT, x2 * POINT, y2 * POINT), ink, HAIR));
    }

    private static void label(List<Mark> marks, String text, double x, double y) {
        marks.add(new Mark.Words(x * POINT, y * POINT, text, 10, true, Ink.Role.TEXT, Mark.Anchor.START));
    }

    private static String mm(double length) {
        return String.format(Locale.ROOT, "%.0f mm", length);
    }
}
