package org.benchleaf.render.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.benchleaf.render.figure.Figure;
import org.benchleaf.render.figure.Mark;
import org.openpdf.text.pdf.PdfContentByte;
import org.openpdf.text.pdf.PdfTemplate;
import org.openpdf.text.pdf.PdfWriter;

/// Figures that come again: an icon, the ring of a plant in several sizes. The first is drawn on its page; from the
/// second on it is stored in the file once and referred to. What was not seen for a while is forgotten.
final class FigureForms {
    private static final int KEPT = 64;

    private final PdfWriter writer;
    private final FontShelf shelf;
    private final Map<List<Mark>, Seen> seen = new LinkedHashMap<>(2 * KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<List<Mark>, Seen> eldest) {
            return size() > KEPT;
        }
    };

    private sealed interface Seen {
        record Once() implements Seen {}

        record Stored(PdfTemplate form) implements Seen {}
    }

    FigureForms(PdfWriter writer, FontShelf shelf) {
        this.writer = writer;
        this.shelf = shelf;
    }

    /// @param x left edge in points from the page's left
    /// @param top upper edge in points from the page's bottom
    /// @param scale of its natural size
    void draw(Figure figure, PdfContentByte page, double x, double top, double scale) {
        Seen before = seen.get(figure.marks());
        if (before == null) {
            seen.put(figure.marks(), new Seen.Once());
            new FigureDrawing(figure).draw(page, shelf, x, top, scale);
            return;
        }
        PdfTemplate form = switch (before) {
            case Seen.Stored(PdfTemplate stored) -> stored;
            case Seen.Once once -> store(figure);
        };
        page.addTemplate(form, (float) scale, 0, 0, (float) scale, (float) x, (float) (top - figure.height() * scale));
    }

    private PdfTemplate store(Figure figure) {
        PdfTemplate form = PdfTemplate.createTemplate(writer, (float) figure.width(), (float) figure.height());
        new FigureDrawing(figure).draw(form, shelf, 0, figure.height(), 1);
        try {
            writer.releaseTemplate(form);
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
        seen.put(figure.marks(), new Seen.Stored(form));
        return form;
    }
}
