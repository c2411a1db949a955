package org.benchleaf.render.pdf;

import java.util.function.Supplier;
import org.benchleaf.render.figure.Figure;
import org.jspecify.annotations.Nullable;
import org.openpdf.text.pdf.PdfContentByte;

/// A figure that is drawn only when the page that shows it is printed.
///
/// @param width natural width in points
/// @param height natural height in points
public record LazyDrawing(double width, double height, Supplier<Figure> figure) implements Drawing {
    public LazyDrawing {
        figure = new Once(figure);
    }

    @Override
    public String alternative() {
        return new FigureDrawing(figure.get()).alternative();
    }

    @Override
    public String markup(String id, String words) {
        return new FigureDrawing(figure.get()).markup(id, words);
    }

    @Override
    public void draw(PdfContentByte page, FontShelf shelf, double x, double top, double scale) {
        new FigureDrawing(figure.get()).draw(page, shelf, x, top, scale);
    }

    /// Its words are asked for before it is drawn; it is made once for both.
    private static final class Once implements Supplier<Figure> {
        private final Supplier<Figure> maker;
        private @Nullable Figure made;

        Once(Supplier<Figure> maker) {
            this.maker = maker;
        }

        @Override
        public Figure get() {
            if (made == null) {
                made = maker.get();
            }
            return made;
        }
    }
}
