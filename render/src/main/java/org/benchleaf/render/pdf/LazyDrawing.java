package org.benchleaf.render.pdf;

import java.util.function.Supplier;
import org.benchleaf.render.figure.Figure;
import org.openpdf.text.pdf.PdfContentByte;

/// A figure that is drawn only when the page that shows it is printed.
///
/// @param width natural width in points
/// @param height natural height in points
public record LazyDrawing(double width, double height, Supplier<Figure> figure) implements Drawing {
    @Override
    public void draw(PdfContentByte page, FontShelf shelf, double x, double top, double scale) {
        new FigureDrawing(figure.get()).draw(page, shelf, x, top, scale);
    }
}
