package org.benchleaf.render.pdf;

import java.util.List;
import org.benchleaf.render.code.CodeImage;
import org.openpdf.text.pdf.PdfContentByte;

/// Draws a code as black rectangles, quiet zone included, on the grid of a 300 dpi printer.
///
/// @param code the code
/// @param dots printer dots of 1/300 in to a module
public record CodeDrawing(CodeImage code, int dots) implements Drawing {
    /// Points to a dot of 1/300 in; exact in two decimals, in which coordinates are written.
    private static final double DOT = 0.24;

    @Override
    public double width() {
        return code.sideInModules() * dots * DOT;
    }

    @Override
    public double height() {
        return width();
    }

    @Override
    public void draw(PdfContentByte page, FontShelf shelf, double x, double top, double scale) {
        if (Math.abs(scale - 1) > 0.002) {
            throw new IllegalStateException("a code is printed at its own size; got " + scale + " of it");
        }
        double module = dots * DOT;
        double left = Math.round(x / DOT) * DOT;
        double upper = Math.round(top / DOT) * DOT;
        page.saveState();
        page.setGrayFill(0);
        List<CodeImage.Run> runs = code.runs();
        for (CodeImage.Run run : runs) {
            page.rectangle(
                    (float) (left + run.x() * module),
                    (float) (upper - (run.y() + 1) * module),
                    (float) (run.length() * module),
                    (float) module);
        }
        page.fill();
        page.restoreState();
    }
}
