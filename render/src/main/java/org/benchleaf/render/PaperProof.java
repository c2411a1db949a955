package org.benchleaf.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.benchleaf.content.StockPaper;
import org.benchleaf.content.Wording;
import org.benchleaf.render.figure.Figure;
import org.benchleaf.render.figure.Ink;
import org.benchleaf.render.figure.Mark;
import org.benchleaf.render.figure.Path;
import org.benchleaf.render.pdf.FigureDrawing;
import org.benchleaf.render.pdf.PrintPage;

/// The cells of a stock paper as hairlines with their numbers: printed on plain paper and held against the stock before
/// any of it is spent.
final class PaperProof {
    private static final double POINT = 72 / 25.4;
    private static final double HAIR = 0.3;

    private PaperProof() {}

    static PrintPage of(StockPaper paper, SheetTemplates templates, Wording words) {
        List<Mark> marks = new ArrayList<>();
        double size = Math.min(10, paper.labelHeight() * POINT * 0.5);
        for (int cell = 0; cell < paper.cells(); cell++) {
            double x = paper.x(cell % paper.columns()) * POINT;
            double y = paper.y(cell / paper.columns()) * POINT;
            double width = paper.labelWidth() * POINT;
            double height = paper.labelHeight() * POINT;
            marks.add(new Mark.Line(Path.rectangle(x, y, width, height), Ink.Role.TEXT, HAIR));
            marks.add(new Mark.Words(
                    x + width / 2,
                    y + height / 2 + size / 3,
                    Integer.toString(cell + 1),
                    size,
                    false,
                    Ink.Role.TEXT,
                    Mark.Anchor.MIDDLE));
        }
        String title = words.text("proof.title", Map.of("paper", paper.name()));
        Figure figure = new Figure(
                paper.sheetWidth() * POINT,
                paper.sheetHeight() * POINT,
                marks,
                title,
                words.text("proof.alternative", Map.of("cells", Integer.toString(paper.cells()))));
        return new PrintPage(
                title,
                List.of(() -> templates.fill(
                        "proof",
                        Map.of(
                                "title", title,
                                "width", paper.sheetWidth(),
                                "height", paper.sheetHeight(),
                                "language", words.language().getLanguage()))),
                Map.of("figure:cells", new FigureDrawing(figure)));
    }
}
