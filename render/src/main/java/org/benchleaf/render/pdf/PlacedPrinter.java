package org.benchleaf.render.pdf;

import java.io.OutputStream;
import java.util.Iterator;
import java.util.Optional;
import java.util.function.Consumer;
import org.benchleaf.render.PressSettings;
import org.benchleaf.render.PrintFinding;
import org.benchleaf.render.PrintRefused;
import org.benchleaf.render.PrintWatch;
import org.benchleaf.shared.Problem;
import org.openpdf.text.Document;
import org.openpdf.text.Rectangle;
import org.openpdf.text.pdf.PdfWriter;

/// Prints pages whose parts have their places, one after another into one PDF 1.7. Nothing of them is laid out by an
/// engine, which is what a page of many costs most.
public final class PlacedPrinter {
    private static final double POINT = 72 / 25.4;

    private final FontShelf shelf;
    private final PressSettings press;
    private final PrintWatch watch;
    private final Optional<Consumer<PrintFinding>> checks;

    /// @param checks hears what is wrong with pages that are printed all the same, when that is looked for
    public PlacedPrinter(
            FontShelf shelf, PressSettings press, PrintWatch watch, Optional<Consumer<PrintFinding>> checks) {
        this.checks = checks;
        this.shelf = shelf;
        this.press = press;
        this.watch = watch;
    }

    /// @param pages at least one; what asking for one throws is that page's refusal
    /// @param title of the document
    /// @param language of the document, such as `en`
    /// @param out left open
    /// @return pages written
    /// @throws PrintRefused when there is no page, or one is refused and the watch does not let it pass
    public int print(Iterator<PlacedPage> pages, String title, String language, OutputStream out) {
        DocumentMarks marks = new DocumentMarks(title, language);
        Document document = new Document();
        PdfWriter writer = PdfWriter.getInstance(document, new KeptOpen(out));
        writer.setPdfVersion(PdfWriter.VERSION_1_7);
        writer.setFullCompression();
        PlacedPainter painter = new PlacedPainter(writer, shelf, press);
        int count = 0;
        while (pages.hasNext()) {
            PlacedPage page;
            try {
                page = pages.next();
            } catch (PrintRefused refusal) {
                watch.refused(refusal);
                continue;
            }
            checks.ifPresent(findings -> PlacedChecks.check(page, findings));
            document.setPageSize(size(page));
            if (count == 0) {
                if (press.cropMarks()) {
                    marks.trimmed(marksOf(page));
                }
                marks.beforeOpening(writer);
                document.setMargins(0, 0, 0, 0);
                document.open();
                marks.onceOpen(writer);
            } else {
                document.newPage();
            }
            painter.paint(page, marksOf(page));
            watch.written(++count);
        }
        if (count == 0) {
            throw new PrintRefused(Problem.of("print.nothing", ""));
        }
        marks.beforeClosing(writer);
        painter.finish();
        document.close();
        return count;
    }

    private Rectangle size(PlacedPage page) {
        return new Rectangle((float) ((page.widthMm() + 2 * press.slugMm()) * POINT), (float)
                ((page.heightMm() + 2 * press.slugMm()) * POINT));
    }

    private PressMarks marksOf(PlacedPage page) {
        return new PressMarks(press, page.widthMm() * POINT, page.heightMm() * POINT);
    }
}
