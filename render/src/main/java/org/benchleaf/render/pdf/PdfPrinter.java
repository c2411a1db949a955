package org.benchleaf.render.pdf;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Iterator;
import java.util.Optional;
import java.util.function.Consumer;
import org.benchleaf.content.ContentPack;
import org.benchleaf.render.PressSettings;
import org.benchleaf.render.PrintFinding;
import org.benchleaf.render.PrintRefused;
import org.benchleaf.render.PrintWatch;
import org.benchleaf.shared.Problem;

/// Prints pages one after another into one PDF 1.7: each page is a document of its own, appended, so that memory and
/// time grow with the number of pages and no faster.
public final class PdfPrinter {
    private final ContentPack content;
    private final FontShelf shelf;
    private final PressSettings press;
    private final PrintWatch watch;

    public PdfPrinter(ContentPack content, FontShelf shelf, PressSettings press, PrintWatch watch) {
        this.content = content;
        this.shelf = shelf;
        this.press = press;
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
        PageLayout layout = new PageLayout(content, shelf, press);
        DocumentMarks document = new DocumentMarks(title, language, layout.device());
        layout.renderer().setListener(document);
        int count = 0;
        try (PageFeed feed = new PageFeed(pages)) {
            for (PageFeed.Step step = feed.next(); !(step instanceof PageFeed.Step.Done); step = feed.next()) {
                try {
                    Optional<PressMarks> marks = layout.layOut(ready(step), feed);
                    if (count == 0) {
                        marks.ifPresent(document::trimmed);
                        layout.device().around(marks, shelf);
                        layout.renderer().createPDF(new KeptOpen(out), false);
                    } else {
                        layout.device().around(marks, shelf);
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

    /// Lays out all pages, writes none, and tells what is wrong with them.
    ///
    /// @return pages that could be printed
    public int check(Iterator<PrintPage> pages, Consumer<PrintFinding> findings) {
        PageLayout layout = new PageLayout(content, shelf, press);
        int count = 0;
        try (PageFeed feed = new PageFeed(pages)) {
            for (PageFeed.Step step = feed.next(); !(step instanceof PageFeed.Step.Done); step = feed.next()) {
                try {
                    PageFeed.Step.Ready ready = ready(step);
                    layout.layOut(ready, feed);
                    new PageChecks(ready.page(), findings).check(layout.root());
                    count++;
                } catch (PrintRefused refusal) {
                    watch.refused(refusal);
                }
            }
        }
        return count;
    }

    private static PageFeed.Step.Ready ready(PageFeed.Step step) {
        return switch (step) {
            case PageFeed.Step.Ready ready -> ready;
            case PageFeed.Step.Refused(PrintRefused refusal) -> throw refusal;
            case PageFeed.Step.Failed(RuntimeException failure) -> throw failure;
            case PageFeed.Step.Failed(Error failure) -> throw failure;
            case PageFeed.Step.Failed(Throwable failure) -> throw new IllegalStateException(failure);
            case PageFeed.Step.Done done -> throw new IllegalStateException("no page after the last");
        };
    }

    /// Passes everything on but the closing.
    private static final class KeptOpen extends FilterOutputStream {
        KeptOpen(OutputStream out) {
            super(out);
        }

        @Override
        public void write(byte[] bytes, int from, int length) throws IOException {
            out.write(bytes, from, length);
        }

        @Override
        public void close() throws IOException {
            flush();
        }
    }
}
