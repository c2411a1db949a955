package org.benchleaf.render.pdf;

import java.awt.Point;
import java.awt.Rectangle;
import java.awt.geom.Point2D;
import org.w3c.dom.Element;
import org.xhtmlrenderer.extend.ReplacedElement;
import org.xhtmlrenderer.extend.UserAgentCallback;
import org.xhtmlrenderer.layout.LayoutContext;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextReplacedElement;
import org.xhtmlrenderer.pdf.ITextReplacedElementFactory;
import org.xhtmlrenderer.render.BlockBox;
import org.xhtmlrenderer.render.RenderingContext;

/// Puts drawings in the place of `img` elements; a key without a drawing stops the print.
final class VectorElements extends ITextReplacedElementFactory {
    private final ITextOutputDevice device;
    private final FontShelf shelf;
    private final PageDrawings drawings;

    VectorElements(ITextOutputDevice device, FontShelf shelf, PageDrawings drawings) {
        super(device);
        this.device = device;
        this.shelf = shelf;
        this.drawings = drawings;
    }

    @Override
    public @org.jspecify.annotations.Nullable ReplacedElement createReplacedElement(
            LayoutContext context, BlockBox box, UserAgentCallback resources, int cssWidth, int cssHeight) {
        Element element = box.getElement();
        if (element == null || !element.getNodeName().equals("img")) {
            return null;
        }
        return new Place(drawings.of(element), cssWidth);
    }

    /// A drawing in its place on the page, in the engine's dots.
    private final class Place implements ITextReplacedElement {
        private final Drawing drawing;
        private final int width;
        private final int height;
        private Point location = new Point();

        Place(Drawing drawing, int cssWidth) {
            this.drawing = drawing;
            this.width = cssWidth > 0 ? cssWidth : (int) Math.round(drawing.width() * device.getDotsPerPoint());
            this.height = (int) Math.round(width * drawing.height() / drawing.width());
        }

        @Override
        public void paint(RenderingContext context, ITextOutputDevice output, BlockBox box) {
            Rectangle area = box.getContentAreaEdge(box.getAbsX(), box.getAbsY(), context);
            Point2D corner = output.getTransform().transform(new Point2D.Double(area.x, area.y), null);
            double pageHeight =
                    output.getCurrentPage().getPdfDocument().getPageSize().getHeight();
            double widthPt = width / (double) output.getDotsPerPoint();
            drawing.draw(
                    output.getCurrentPage(),
                    shelf,
                    corner.getX(),
                    pageHeight - corner.getY(),
                    widthPt / drawing.width());
        }

        @Override
        public int getIntrinsicWidth() {
            return width;
        }

        @Override
        public int getIntrinsicHeight() {
            return height;
        }

        @Override
        public Point getLocation() {
            return location;
        }

        @Override
        public void setLocation(int x, int y) {
            location = new Point(x, y);
        }

        @Override
        public void detach(LayoutContext context) {}

        @Override
        public boolean isRequiresInteractivePaint() {
            return false;
        }

        @Override
        public boolean hasBaseline() {
            return false;
        }

        @Override
        public int getBaseline() {
            return 0;
        }
    }
}
