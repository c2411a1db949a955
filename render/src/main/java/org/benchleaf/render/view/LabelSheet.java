package org.benchleaf.render.view;

import java.util.ArrayList;
import java.util.List;
import org.benchleaf.content.Palette;
import org.benchleaf.content.StockPaper;
import org.benchleaf.render.figure.Figure;
import org.benchleaf.render.figure.Ink;
import org.benchleaf.render.figure.Mark;
import org.benchleaf.render.figure.Path;
import org.benchleaf.render.page.LabelRun;
import org.benchleaf.render.pdf.Drawing;
import org.benchleaf.render.pdf.FigureDrawing;
import org.benchleaf.render.pdf.FontShelf;
import org.benchleaf.render.pdf.PlacedPage;

/// One sheet of labels in work: each label is put in its cell.
public final class LabelSheet {
    private static final double POINT = 72 / 25.4;
    private static final double BAR_MM = 100;
    private static final double TICK_MM = 2;
    private static final double HAIR = 0.25;
    private static final double BAR_TYPE = 6;

    private final LabelRun run;
    private final Placing placing;

    /// @param palette inks of the words
    public LabelSheet(LabelRun run, FontShelf shelf, Palette palette) {
        this.run = run;
        this.placing = new Placing(shelf, palette);
    }

    /// @param cell from 0, by rows from the top left
    public void put(LabelView label, int cell) {
        StockPaper paper = run.paper();
        double left = paper.x(cell % paper.columns()) + run.nudgeRightMm();
        double top = paper.y(cell / paper.columns()) + run.nudgeDownMm();
        figure(label.code(), left + label.codeLeft(), top + label.codeTop());
        double text = left + label.textLeft();
        double name = left + label.nameLeft();
        placing.words(label.name(), name, top + label.nameTop(), "ink");
        placing.words(label.common(), name, top + label.commonTop(), "soft");
        placing.words(label.size(), text, top + label.sizeTop(), "ink");
        placing.wordsAtTheRight(label.place(), text + label.textWidth(), top + label.placeTop(), "ink");
        placing.words(label.detail(), text, top + label.detailTop(), "soft");
        label.bars().forEach(bars -> figure(bars.drawing(), left + bars.left(), top + bars.top()));
    }

    private void figure(Drawing drawing, double left, double top) {
        placing.add(new PlacedPage.Part.Figure(drawing, left, top, drawing.width() / POINT, drawing.alternative()));
    }

    /// The sheet with its bar of 100 mm, when there is one.
    public PlacedPage page(String title) {
        StockPaper paper = run.paper();
        if (run.check()) {
            LabelRun.checkBar(paper)
                    .ifPresent(top -> placing.add(new PlacedPage.Part.Figure(
                            new FigureDrawing(bar()), (paper.sheetWidth() - BAR_MM) / 2, top, BAR_MM, "")));
        }
        return new PlacedPage(title, paper.sheetWidth(), paper.sheetHeight(), placing.parts());
    }

    /// A tick each 10 mm: measured, it tells whether the printer scaled.
    private static Figure bar() {
        double length = BAR_MM * POINT;
        double tick = TICK_MM * POINT;
        String words = "100 mm";
        List<Mark> marks = new ArrayList<>();
        // its outer edges are 100 mm apart
        double from = HAIR / 2;
        double to = length - HAIR / 2;
        marks.add(line(from, tick, to, tick));
        for (int cm = 0; cm <= 10; cm++) {
            double at = from + cm * (to - from) / 10;
            marks.add(line(at, 0, at, tick));
        }
        double below = tick + BAR_TYPE * 1.2;
        marks.add(new Mark.Words(length / 2, below, words, BAR_TYPE, false, Ink.Role.SOFT, Mark.Anchor.MIDDLE));
        return new Figure(length, below + 1, marks, words, words);
    }

    private static Mark line(double x1, double y1, double x2, double y2) {
        return new Mark.Line(Path.line(x1, y1, x2, y2), Ink.Role.TEXT, HAIR);
    }
}
