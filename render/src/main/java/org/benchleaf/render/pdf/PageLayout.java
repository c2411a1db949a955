package org.benchleaf.render.pdf;

import java.util.List;
import java.util.Objects;
import org.benchleaf.content.ContentPack;
import org.benchleaf.render.Calibration;
import org.benchleaf.render.PrintRefused;
import org.benchleaf.shared.Problem;
import org.openpdf.text.pdf.PdfWriter;
import org.w3c.dom.Document;
import org.xhtmlrenderer.pdf.ITextRenderer;
import org.xhtmlrenderer.pdf.ITextTextRenderer;
import org.xhtmlrenderer.render.BlockBox;
import org.xhtmlrenderer.render.PageBox;

/// Lays pages out, one at a time, with one engine for the whole of a print.
final class PageLayout {
    private static final int DOTS_PER_PIXEL = 20;

    private final PageDrawings drawings = new PageDrawings();
    private final TaggedDevice device;
    private final StrictResources resources;
    private final ITextRenderer renderer;

    PageLayout(ContentPack content, FontShelf shelf, Calibration calibration) {
        this.device = new TaggedDevice(ITextRenderer.DEFAULT_DOTS_PER_POINT, drawings::alternative, calibration);
        this.resources = new StrictResources(device, DOTS_PER_PIXEL, content);
        this.renderer = new ITextRenderer(
                ITextRenderer.DEFAULT_DOTS_PER_POINT,
                DOTS_PER_PIXEL,
                device,
                resources,
                new StrictFontResolver(shelf),
                new VectorElements(device, shelf, drawings),
                new ITextTextRenderer());
        renderer.getSharedContext().setCss(new KeptStyles(resources));
        renderer.setPDFVersion(String.valueOf(PdfWriter.VERSION_1_7));
    }

    ITextRenderer renderer() {
        return renderer;
    }

    TaggedDevice device() {
        return device;
    }

    /// The page as it is laid out.
    BlockBox root() {
        return Objects.requireNonNull(renderer.getRootBox(), "a page that is laid out");
    }

    /// Lays out the roomiest version that fits one page.
    ///
    /// @throws PrintRefused when none does
    /// @throws org.benchleaf.content.MissingContent when it asks for a file, font or picture that is not there
    void layOut(PageFeed.Ready ready, PageFeed feed) {
        PrintPage page = ready.page();
        drawings.show(page.drawings());
        for (int version = 0; version < page.versions().size(); version++) {
            layOut(
                    version == 0
                            ? ready.first()
                            : feed.parse(page.versions().get(version).get()));
            if (pages().size() == 1) {
                resources.stopIfMissed();
                return;
            }
        }
        resources.stopIfMissed();
        throw new PrintRefused(Problem.of("print.page-overflow", page.name()).with("name", page.name()));
    }

    private void layOut(Document document) {
        renderer.setDocument(document, "", new PdfLinks());
        renderer.layout();
    }

    private List<PageBox> pages() {
        return Objects.requireNonNull(root().getLayer(), "a page that is laid out")
                .getPages();
    }

    /// @throws org.benchleaf.content.MissingContent when anything was missing so far
    void stopIfMissed() {
        resources.stopIfMissed();
    }
}
