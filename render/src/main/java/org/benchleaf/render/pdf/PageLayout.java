package org.benchleaf.render.pdf;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.benchleaf.content.ContentPack;
import org.benchleaf.render.PressSettings;
import org.benchleaf.render.PrintRefused;
import org.benchleaf.shared.Problem;
import org.openpdf.text.pdf.PdfWriter;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xhtmlrenderer.css.style.CalculatedStyle;
import org.xhtmlrenderer.layout.LayoutContext;
import org.xhtmlrenderer.pdf.ITextRenderer;
import org.xhtmlrenderer.pdf.ITextTextRenderer;
import org.xhtmlrenderer.render.BlockBox;
import org.xhtmlrenderer.render.PageBox;

/// Lays pages out, one at a time, with one engine for the whole of a print.
final class PageLayout {
    private static final int DOTS_PER_PIXEL = 20;
    private static final double DOTS_PER_POINT = ITextRenderer.DEFAULT_DOTS_PER_POINT;
    private static final double POINT_MM = 25.4 / 72;

    private final PressSettings press;
    private final PageDrawings drawings = new PageDrawings();
    private final TaggedDevice device;
    private final StrictResources resources;
    private final ITextRenderer renderer;

    PageLayout(ContentPack content, FontShelf shelf, PressSettings press) {
        this.press = press;
        this.device =
                new TaggedDevice(ITextRenderer.DEFAULT_DOTS_PER_POINT, drawings::alternative, press.calibration());
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
    /// @return where it is trimmed, when it stands on larger paper
    /// @throws PrintRefused when none does
    /// @throws org.benchleaf.content.MissingContent when it asks for a file, font or picture that is not there
    Optional<PressMarks> layOut(PageFeed.Step.Ready ready, PageFeed feed) {
        PrintPage page = ready.page();
        drawings.show(page.drawings());
        for (int version = 0; version < page.versions().size(); version++) {
            Document document = version == 0
                    ? ready.first()
                    : feed.parse(page.versions().get(version).get());
            layOut(document);
            if (pages().size() == 1) {
                Optional<PressMarks> marks = press.cropMarks() ? Optional.of(enlarge(document)) : Optional.empty();
                resources.stopIfMissed();
                return marks;
            }
        }
        resources.stopIfMissed();
        throw new PrintRefused(Problem.of("print.page-overflow", page.name()).with("name", page.name()));
    }

    private void layOut(Document document) {
        renderer.setDocument(document, "", new PdfLinks());
        renderer.layout();
    }

    /// Puts the page on paper that is larger on every side. What has no margin of its own may reach into the bleed; the
    /// engine cuts off whatever leaves the area within the margins.
    private PressMarks enlarge(Document document) {
        PageBox page = pages().getFirst();
        LayoutContext context =
                renderer.getSharedContext().newLayoutContextInstance(new org.xhtmlrenderer.pdf.ITextFontContext());
        double width = page.getWidth(context) / DOTS_PER_POINT;
        double height = page.getHeight(context) / DOTS_PER_POINT;
        double slug = press.slugMm();
        StringBuilder style = new StringBuilder()
                .append(rule(
                        "@page { size: %.4fmm %.4fmm; ", width * POINT_MM + 2 * slug, height * POINT_MM + 2 * slug));
        boolean toTheEdge = true;
        for (CalculatedStyle.Edge edge : CalculatedStyle.Edge.values()) {
            double margin = page.getMarginBorderPadding(context, edge) / DOTS_PER_POINT * POINT_MM;
            toTheEdge &= margin < 0.01;
            style.append(rule(
                    "margin-" + edge.name().toLowerCase(Locale.ROOT) + ": %.4fmm; ",
                    margin < 0.01 ? slug - press.bleedMm() : margin + slug));
        }
        style.append('}');
        if (toTheEdge) {
            style.append(rule(" body { margin: %.4fmm }", press.bleedMm()));
        }
        Element sheet = document.createElementNS("http://www.w3.org/1999/xhtml", "style");
        sheet.setAttribute("type", "text/css");
        sheet.setTextContent(style.toString());
        document.getElementsByTagName("head").item(0).appendChild(sheet);
        layOut(document);
        return new PressMarks(press, width, height);
    }

    private static String rule(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
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
