package org.benchleaf.render;

import org.benchleaf.render.pdf.DotCanvas;
import org.benchleaf.render.pdf.DotFonts;
import org.benchleaf.render.pdf.FontShelf;
import org.benchleaf.render.view.LabelView;
import org.benchleaf.render.view.TextBlock;

/// One label as a picture of a roll printer's dots.
final class LabelDots {
    private final DotFonts fonts;
    private final FontShelf shelf;
    private final int dpi;

    LabelDots(DotFonts fonts, FontShelf shelf, int dpi) {
        this.fonts = fonts;
        this.shelf = shelf;
        this.dpi = dpi;
    }

    byte[] png(LabelView label) {
        DotCanvas canvas = new DotCanvas(label.width(), label.height(), dpi, fonts, shelf);
        canvas.draw(label.code(), label.codeLeft(), label.codeTop());
        for (LabelView.Bars bars : label.bars()) {
            canvas.draw(bars.drawing(), bars.left(), bars.top());
        }
        block(canvas, label, label.name(), label.nameLeft(), label.nameTop(), false);
        block(canvas, label, label.common(), label.nameLeft(), label.commonTop(), false);
        block(canvas, label, label.size(), label.textLeft(), label.sizeTop(), false);
        block(canvas, label, label.place(), label.textLeft(), label.placeTop(), true);
        block(canvas, label, label.detail(), label.textLeft(), label.detailTop(), false);
        return canvas.png();
    }

    private static void block(
            DotCanvas canvas, LabelView label, TextBlock block, double left, double top, boolean atTheRight) {
        double y = top;
        for (var line : block.lines()) {
            canvas.line(
                    line.runs().stream()
                            .map(run -> new DotCanvas.Piece(run.face(), run.text()))
                            .toList(),
                    block.size(),
                    block.leading(),
                    left,
                    label.textWidth(),
                    y,
                    atTheRight);
            y += block.leading() * 25.4 / 72;
        }
    }
}
