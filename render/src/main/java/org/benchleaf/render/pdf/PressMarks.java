package org.benchleaf.render.pdf;

import org.benchleaf.render.Calibration;
import org.benchleaf.render.PressSettings;
import org.openpdf.text.Rectangle;
import org.openpdf.text.pdf.PdfContentByte;

/// What stands around a page that is trimmed: marks where to cut, beyond the bleed, and a bar of 100 mm to check by
/// that nothing was scaled. All of it is cut off.
///
/// @param press says how wide the room around is
/// @param trimWidth of the page in points
/// @param trimHeight of the page in points
record PressMarks(PressSettings press, double trimWidth, double trimHeight) {
    private static final double POINT = 72 / 25.4;
    private static final double MARK_MM = 5;
    /// Between bleed and mark, so that a cut a little off shows none.
    private static final double GAP_MM = 1;

    private static final double BAR_MM = 100;

    /// Moves and stretches all that is painted after it by what the printer does wrong.
    ///
    /// @param height of the page in points
    static void putRight(Calibration calibration, PdfContentByte page, double height) {
        if (!calibration.equals(Calibration.NONE)) {
            page.concatCTM(
                    (float) calibration.scaleX(),
                    0,
                    0,
                    (float) calibration.scaleY(),
                    (float) (calibration.rightMm() * POINT),
                    (float) (height * (1 - calibration.scaleY()) - calibration.downMm() * POINT));
        }
    }

    private double slug() {
        return press.slugMm() * POINT;
    }

    /// The page as it is after trimming.
    Rectangle trim() {
        return around(0);
    }

    /// As far as ink reaches.
    Rectangle bleed() {
        return around(press.bleedMm() * POINT);
    }

    private Rectangle around(double more) {
        return new Rectangle(
                (float) (slug() - more), (float) (slug() - more), (float) (slug() + trimWidth + more), (float)
                        (slug() + trimHeight + more));
    }

    void draw(PdfContentByte page, FontShelf shelf) {
        double near = (press.bleedMm() + GAP_MM) * POINT;
        double far = near + MARK_MM * POINT;
        double left = slug();
        double right = slug() + trimWidth;
        double bottom = slug();
        double top = slug() + trimHeight;
        page.saveState();
        page.setRGBColorStroke(0, 0, 0);
        page.setRGBColorFill(0, 0, 0);
        page.setLineWidth(0.25f);
        page.setLineCap(PdfContentByte.LINE_CAP_BUTT);
        for (double x : new double[] {left, right}) {
            line(page, x, bottom - near, x, bottom - far);
            line(page, x, top + near, x, top + far);
        }
        for (double y : new double[] {bottom, top}) {
            line(page, left - near, y, left - far, y);
            line(page, right + near, y, right + far, y);
        }
        bar(page, shelf);
        page.restoreState();
    }

    /// Below the page when it is wide enough, else at its left; a page that is neither has none.
    private void bar(PdfContentByte page, FontShelf shelf) {
        double length = BAR_MM * POINT;
        double middle = (slug() - press.bleedMm() * POINT) / 2;
        boolean level = trimWidth >= length;
        if (!level && trimHeight < length) {
            return;
        }
        double start = slug() + ((level ? trimWidth : trimHeight) - length) / 2;
        double tick = 2 * POINT;
        for (int cm = 0; cm <= 10; cm++) {
            double at = start + cm * 10 * POINT;
            double high = cm % 10 == 0 ? tick : tick / 2;
            if (level) {
                line(page, at, middle, at, middle + high);
            } else {
                line(page, middle, at, middle + high, at);
            }
        }
        if (level) {
            line(page, start, middle, start + length, middle);
        } else {
            line(page, middle, start, middle, start + length);
        }
        String words = "100 mm";
        double size = 6;
        double along = start + (length - shelf.width(Face.FACTS, words, size)) / 2;
        page.beginText();
        page.setFontAndSize(shelf.font(Face.FACTS), (float) size);
        if (level) {
            page.setTextMatrix((float) along, (float) (middle - size));
        } else {
            page.setTextMatrix(0, 1, -1, 0, (float) (middle - 1), (float) along);
        }
        page.showText(words);
        page.endText();
    }

    private static void line(PdfContentByte page, double x1, double y1, double x2, double y2) {
        page.moveTo((float) x1, (float) y1);
        page.lineTo((float) x2, (float) y2);
        page.stroke();
    }
}
