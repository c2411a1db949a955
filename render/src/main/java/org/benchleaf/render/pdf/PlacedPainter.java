package org.benchleaf.render.pdf;

import java.util.ArrayList;
import java.util.List;
import org.benchleaf.render.PressSettings;
import org.benchleaf.render.figure.Figure;
import org.benchleaf.shared.color.Srgb;
import org.openpdf.text.pdf.PdfContentByte;
import org.openpdf.text.pdf.PdfWriter;

/// Paints pages whose parts have their places, and says of each part what it is.
final class PlacedPainter {
    private static final double POINT = 72 / 25.4;

    private final PdfWriter writer;
    private final FontShelf shelf;
    private final PressSettings press;
    private final FigureForms forms;
    private @org.jspecify.annotations.Nullable StructureTree tree;

    PlacedPainter(PdfWriter writer, FontShelf shelf, PressSettings press) {
        this.writer = writer;
        this.shelf = shelf;
        this.press = press;
        this.forms = new FigureForms(writer, shelf);
    }

    /// Onto the page that the writer has begun.
    void paint(PlacedPage page, PressMarks marks) {
        if (tree == null) {
            tree = new StructureTree(writer);
        }
        int key = tree.startPage();
        Page one = new Page(page);
        PdfContentByte content = writer.getDirectContent();
        PressMarks.putRight(press.calibration(), content, (page.heightMm() + 2 * press.slugMm()) * POINT);
        page.parts().forEach(one::paint);
        if (press.cropMarks()) {
            one.mark(null);
            marks.draw(content, shelf);
        }
        one.close();
        tree.write(one.section);
        tree.page(key, one.owners);
    }

    /// Writes what stands above all pages; the PDF is closed after it.
    void finish() {
        if (tree != null) {
            tree.close();
        }
    }

    /// One page in work.
    private final class Page {
        private final PdfContentByte content = writer.getDirectContent();
        private final int object = writer.getCurrentPage().getNumber();
        private final TagNode section = new TagNode("Sect");
        private final List<TagNode> owners = new ArrayList<>();
        private final double left = press.slugMm();
        private final double bottom;
        private boolean ornament;
        private boolean open;

        Page(PlacedPage page) {
            this.bottom = page.heightMm() + press.slugMm();
        }

        private float x(double mm) {
            return (float) ((left + mm) * POINT);
        }

        private float y(double mm) {
            return (float) ((bottom - mm) * POINT);
        }

        void paint(PlacedPage.Part part) {
            switch (part) {
                case PlacedPage.Part.Words words -> words(words);
                case PlacedPage.Part.Figure figure -> {
                    mark(figure.alternative().isBlank() ? null : figure(figure.alternative()));
                    double scale = figure.width() * POINT / figure.drawing().width();
                    if (figure.drawing() instanceof FigureDrawing(Figure drawn)) {
                        forms.draw(drawn, content, x(figure.left()), y(figure.top()), scale);
                    } else {
                        figure.drawing().draw(content, shelf, x(figure.left()), y(figure.top()), scale);
                    }
                }
                case PlacedPage.Part.Rule rule -> {
                    mark(null);
                    fill(rule.ink());
                    content.rectangle(
                            x(rule.left()),
                            (float) (y(rule.top()) - rule.thick()),
                            (float) (rule.width() * POINT),
                            (float) rule.thick());
                    content.fill();
                }
            }
        }

        private TagNode figure(String alternative) {
            TagNode figure = new TagNode("Figure");
            figure.entry("/Alt" + RawObject.text(alternative));
            return figure;
        }

        private void words(PlacedPage.Part.Words words) {
            mark(new TagNode(words.heading() ? "H1" : "P"));
            content.beginText();
            PlacedPage.Line last = words.lines().getLast();
            for (PlacedPage.Line line : words.lines()) {
                content.setTextMatrix(x(line.left()), y(line.baseline()));
                for (PlacedPage.Piece piece : line.pieces()) {
                    fill(piece.ink());
                    content.setFontAndSize(shelf.font(piece.face()), (float) piece.size());
                    content.showText(piece.text());
                }
                // without it readers join the words at both sides of the break
                if (line != last && !line.pieces().getLast().text().endsWith("-")) {
                    content.showText(" ");
                }
            }
            content.endText();
        }

        private void fill(Srgb ink) {
            content.setRGBColorFill(ink.red(), ink.green(), ink.blue());
        }

        /// What follows belongs to an element of its own, or is ornament.
        void mark(@org.jspecify.annotations.Nullable TagNode element) {
            if (open && ornament && element == null) {
                return;
            }
            close();
            if (element == null) {
                content.setLiteral("/Artifact BMC\n");
            } else {
                int id = owners.size();
                section.add(element).run().marks().add(new TagRun.Mark(object, id));
                owners.add(element);
                content.setLiteral("/" + element.role() + "<</MCID " + id + ">>BDC\n");
            }
            open = true;
            ornament = element == null;
        }

        void close() {
            if (open) {
                content.setLiteral("EMC\n");
                open = false;
            }
        }
    }
}
