package org.benchleaf.render.pdf;

import java.io.OutputStream;
import java.util.Iterator;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import org.benchleaf.content.ContentPack;
import org.benchleaf.render.Calibration;
import org.benchleaf.render.PrintFinding;
import org.benchleaf.render.PrintRefused;
import org.benchleaf.render.PrintWatch;
import org.benchleaf.shared.Problem;
import org.openpdf.text.pdf.PdfWriter;
import org.xhtmlrenderer.pdf.DefaultPDFCreationListener;
import org.xhtmlrenderer.pdf.ITextRenderer;

/// Lays pages out and prints them one after another into one PDF 1.7: each page is a document of its own, appended, so
/// that memory and
/// time grow with the number of pages and no faster.
public final class PdfPrinter {
    private final ContentPack content;
    private final FontShelf shelf;
    private final Calibration calibration;
    private final PrintWatch watch;
    private final Optional<Consumer<PrintFinding>> checks;

    /// @param checks hears what is wrong with pages that are printed all the same, when that is looked for
    public PdfPrinter(
            ContentPack content,
            FontShelf shelf,
            Calibration calibration,
            PrintWatch watch,
            Optional<Consumer<PrintFinding>> checks) {
        this.checks = checks;
        this.content = content;
        this.shelf = shelf;
        this.calibration = calibration;
        this.watch = watch;
    }

    /// @param pages at least one; taken one at a time, after the first few by another thread
    /// @param title of the document
    /// @param language of the document, such as `en`
    /// @param out left open
    /// @return pages written
    /// @throws PrintRefused when there is no page, or one does not fit and the watch does not let it pass
    /// @throws org.benchleaf.content.MissingContent when a page asks for a file, font or picture that is not there
    public int print(Iterator<PrintPage> pages, String title, String language, OutputStream out) {
        PageLayout layout = new PageLayout(content, shelf, calibration);
        DocumentMarks document = new DocumentMarks(title, language);
        layout.renderer().setListener(new Marking(document, layout.device()));
        int count = 0;
        try (PageFeed feed = new PageFeed(pages)) {
            while (feed.hasNext()) {
                try {
                    PageFeed.Ready ready = feed.next();
                    layout.layOut(ready, feed);
                    checks.ifPresent(findings -> new PageChecks(ready.page(), findings).check(layout.root()));
                    if (count == 0) {
                        layout.renderer().createPDF(new KeptOpen(out), false);
                    } else {
                        layout.renderer().writeNextDocument(count + 1);
                    }
                } catch (PrintRefused refusal) {
                    watch.refused(refusal);
                    continue;
                }
                layout.stopIfMissed();
                watch.written(++count);
            }
        }
        if (count == 0) {
            throw new PrintRefused(Problem.of("print.nothing", ""));
        }
        layout.renderer().finishPDF();
        return count;
    }

    /// Says at the engine's moments what the PDF says of itself.
    private static final class Marking extends DefaultPDFCreationListener {
        private final DocumentMarks document;
        private final TaggedDevice device;

        Marking(DocumentMarks document, TaggedDevice device) {
            this.document = document;
            this.device = device;
        }

        @Override
        public void preOpen(ITextRenderer renderer) {
            document.beforeOpening(writer(renderer));
        }

        @Override
        public void preWrite(ITextRenderer renderer, int pageCount) {
            document.onceOpen(writer(renderer));
        }

        @Override
        public void onClose(ITextRenderer renderer) {
            document.beforeClosing(writer(renderer));
            device.finishStructure();
        }

        private static PdfWriter writer(ITextRenderer renderer) {
            return Objects.requireNonNull(renderer.getWriter(), "a PDF that is about to be opened or open");
        }
    }
}
