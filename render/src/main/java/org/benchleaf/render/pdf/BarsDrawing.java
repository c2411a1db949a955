package org.benchleaf.render.pdf;

import org.benchleaf.render.code.BarsImage;
import org.openpdf.text.pdf.PdfContentByte;

/// Draws the bars of a trade number with its digits below, quiet zones included, in whole dots of a printer.
///
/// @param bars the bars
/// @param tall height in points, digits included
/// @param dpi printer dots to the inch
public record BarsDrawing(BarsImage bars, double tall, int dpi) implements Drawing {
    /// Of the height, for the digits.
    private static final double DIGITS_POINT = 8;

    @Override
    public double width() {
        return bars.widthInModules() * module();
    }

    private double dot() {
        return 72.0 / dpi;
    }

    private double module() {
        return BarsImage.dots(dpi) * dot();
    }

    @Override
    public double height() {
        return tall;
    }

    @Override
    public String alternative() {
        return bars.digits();
    }

    @Override
    public void draw(PdfContentByte page, FontShelf shelf, double x, double top, double scale) {
        if (Math.abs(scale - 1) > 0.002) {
            throw new IllegalStateException("bars are printed at their own size; got " + scale + " of it");
        }
        double left = Math.round(x / dot()) * dot();
        page.saveState();
        page.setGrayFill(0);
        for (BarsImage.Bar bar : bars.bars()) {
            double high = tall - DIGITS_POINT + (bar.guard() ? DIGITS_POINT / 2 : 0);
            page.rectangle(
                    (float) (left + (bar.from() + CodeDrawing.INSET) * module()),
                    (float) (top - high),
                    (float) ((bar.width() - 2 * CodeDrawing.INSET) * module()),
                    (float) high);
        }
        page.fill();
        double width = shelf.width(Face.FACTS, bars.digits(), DIGITS_POINT);
        page.beginText();
        page.setFontAndSize(shelf.font(Face.FACTS), (float) DIGITS_POINT);
        page.setTextMatrix((float) (left + (width() - width) / 2), (float) (top - tall + 0.6));
        page.showText(bars.digits());
        page.endText();
        page.restoreState();
    }
}
