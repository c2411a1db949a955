package org.benchleaf.render.pdf;

import java.awt.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.benchleaf.render.Calibration;
import org.jspecify.annotations.Nullable;
import org.openpdf.text.Rectangle;
import org.openpdf.text.pdf.PdfAction;
import org.openpdf.text.pdf.PdfAnnotation;
import org.openpdf.text.pdf.PdfBorderArray;
import org.openpdf.text.pdf.PdfContentByte;
import org.openpdf.text.pdf.PdfName;
import org.openpdf.text.pdf.PdfNumber;
import org.openpdf.text.pdf.PdfObject;
import org.openpdf.text.pdf.PdfString;
import org.openpdf.text.pdf.PdfWriter;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xhtmlrenderer.extend.FSImage;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.render.BlockBox;
import org.xhtmlrenderer.render.Box;
import org.xhtmlrenderer.render.InlineLayoutBox;
import org.xhtmlrenderer.render.InlineText;
import org.xhtmlrenderer.render.JustificationInfo;
import org.xhtmlrenderer.render.LineBox;
import org.xhtmlrenderer.render.RenderingContext;

/// Paints pages and says of everything painted what it is: which heading, paragraph, cell or figure it belongs to, or
/// that it is ornament. Neighbors of one run share one mark.
final class TaggedDevice extends ITextOutputDevice {
    /// A page of the part in work.
    private record Page(int key, int object, List<TagNode> owners) {}

    /// A link of the part in work.
    private record Link(int key, TagNode owner) {}

    private enum Open {
        NOTHING,
        ORNAMENT,
        RUN
    }

    private final Function<Element, String> alternatives;
    private final Calibration calibration;
    private final List<Page> pages = new ArrayList<>();
    private final List<Link> links = new ArrayList<>();
    private @Nullable StructureTree tree;
    private @Nullable ReadingOrder order;
    private Open open = Open.NOTHING;
    private @Nullable TagRun openRun;
    private @Nullable TagRun lastRun;
    private @Nullable InlineText lastText;
    private boolean inside;

    /// @param alternatives what speaks for an `img` without an `alt` of its own
    TaggedDevice(float dotsPerPoint, Function<Element, String> alternatives, Calibration calibration) {
        super(dotsPerPoint);
        this.alternatives = alternatives;
        this.calibration = calibration;
    }

    @Override
    public void start(Document page) {
        super.start(page);
        order = new ReadingOrder(page, alternatives);
        pages.clear();
        links.clear();
    }

    @Override
    public void initializePage(PdfContentByte content, float height) {
        PdfWriter writer = Objects.requireNonNull(getWriter(), "a PDF that is open");
        if (tree == null) {
            tree = new StructureTree(writer);
        }
        pages.add(new Page(tree.startPage(), writer.getCurrentPage().getNumber(), new ArrayList<>()));
        // before the engine saves the state to which it comes back
        PressMarks.putRight(calibration, content, height);
        super.initializePage(content, height);
    }

    @Override
    public void finishPage() {
        close();
        super.finishPage();
    }

    @Override
    public void finish(RenderingContext context, Box root) {
        super.finish(context, root);
        StructureTree written = Objects.requireNonNull(tree);
        written.write(Objects.requireNonNull(order).part());
        pages.forEach(page -> written.page(page.key(), page.owners()));
        links.forEach(link -> written.link(link.key(), link.owner()));
    }

    /// Writes what stands above all pages; the PDF is closed after it.
    void finishStructure() {
        if (tree != null) {
            tree.close();
        }
    }

    @Override
    public void drawText(RenderingContext context, InlineText text) {
        Optional<TagRun> run = Objects.requireNonNull(order).runOf(text.getTextNode());
        marked(run, () -> {
            run.ifPresent(of -> spaceBetweenLines(of, text));
            super.drawText(context, text);
        });
    }

    /// The engine drops the space at which it breaks a line; without it the words of both lines are read as one.
    private void spaceBetweenLines(TagRun run, InlineText text) {
        InlineText before = lastText;
        if (before != null
                && lastRun == run
                && lineOf(before) != lineOf(text)
                && !before.getSubstring().endsWith("-")) {
            InlineLayoutBox box = Objects.requireNonNull(before.getParent());
            super.drawString(
                    " ", box.getAbsX() + before.getX() + before.getWidth(), box.getAbsY() + box.getBaseline(), null);
        }
        lastRun = run;
        lastText = text;
    }

    private static LineBox lineOf(InlineText text) {
        return Objects.requireNonNull(text.getParent(), "text that is laid out").getLineBox();
    }

    @Override
    public void paintReplacedElement(RenderingContext context, BlockBox box) {
        Optional<TagRun> run = Objects.requireNonNull(order).runOf(box.getElement());
        marked(run, () -> super.paintReplacedElement(context, box));
        Element element = box.getElement();
        if (element != null && element.getParentNode() instanceof Element parent) {
            link(parent, context, box);
        }
    }

    @Override
    public void paintBackground(RenderingContext context, Box box) {
        super.paintBackground(context, box);
        if (box instanceof InlineLayoutBox && box.getElement() != null) {
            link(box.getElement(), context, box);
        }
    }

    private void link(Element element, RenderingContext context, Box box) {
        Objects.requireNonNull(order).linkOf(element).ifPresent(owner -> {
            Rectangle place = createLocalTargetArea(context, box);
            if (place.getWidth() <= 0 || place.getHeight() <= 0) {
                return;
            }
            int key = Objects.requireNonNull(tree).newKey();
            PdfAnnotation annotation = new PdfAnnotation(
                    getWriter(),
                    place.getLeft(),
                    place.getBottom(),
                    place.getRight(),
                    place.getTop(),
                    new PdfAction(element.getAttribute("href")));
            annotation.put(PdfName.SUBTYPE, PdfName.LINK);
            annotation.put(PdfName.F, new PdfNumber(PdfAnnotation.FLAGS_PRINT));
            annotation.put(PdfName.CONTENTS, new PdfString(contents(element), PdfObject.TEXT_UNICODE));
            annotation.put(PdfName.STRUCTPARENT, new PdfNumber(key));
            annotation.setBorder(new PdfBorderArray(0, 0, 0));
            owner.add(new TagLink(
                    annotation.getIndirectReference().getNumber(),
                    pages.getLast().object()));
            links.add(new Link(key, owner));
            Objects.requireNonNull(getWriter()).addAnnotation(annotation);
        });
    }

    private static String contents(Element link) {
        String words = link.getTextContent().strip();
        return words.isEmpty() ? link.getAttribute("href") : words;
    }

    @Override
    public void fill(Shape shape) {
        ornamentUnlessInside();
        super.fill(shape);
    }

    @Override
    public void draw(Shape shape) {
        ornamentUnlessInside();
        super.draw(shape);
    }

    @Override
    public void drawImage(FSImage image, int x, int y) {
        ornamentUnlessInside();
        super.drawImage(image, x, y);
    }

    @Override
    public void drawString(String text, float x, float y, @Nullable JustificationInfo info) {
        ornamentUnlessInside();
        super.drawString(text, x, y, info);
    }

    @Override
    public void clip(Shape shape) {
        close();
        super.clip(shape);
    }

    @Override
    @SuppressWarnings("NullAway") // none is the whole page; the engine forgot to say so
    public void setClip(@Nullable Shape shape) {
        close();
        super.setClip(shape);
    }

    private void marked(Optional<TagRun> run, Runnable paint) {
        if (run.isPresent()) {
            open(run.get());
        } else {
            ornament();
        }
        inside = true;
        try {
            paint.run();
        } finally {
            inside = false;
        }
    }

    private void open(TagRun run) {
        if (open == Open.RUN && openRun == run) {
            return;
        }
        close();
        Page page = pages.getLast();
        int id = page.owners().size();
        page.owners().add(run.owner());
        run.marks().add(new TagRun.Mark(page.object(), id));
        getCurrentPage().setLiteral("/" + run.owner().role() + "<</MCID " + id + ">>BDC\n");
        open = Open.RUN;
        openRun = run;
    }

    private void ornamentUnlessInside() {
        if (!inside) {
            ornament();
        }
    }

    private void ornament() {
        if (open != Open.ORNAMENT) {
            close();
            getCurrentPage().setLiteral("/Artifact BMC\n");
            open = Open.ORNAMENT;
        }
    }

    private void close() {
        if (open != Open.NOTHING) {
            getCurrentPage().setLiteral("EMC\n");
            open = Open.NOTHING;
            openRun = null;
        }
    }
}
