package org.benchleaf.render.pdf;

import org.openpdf.text.pdf.PdfContentByte;

/// Something drawn as vectors into the place of an `img` whose `src` is its key.
public interface Drawing {
    /// Natural width in points.
    double width();

    /// Natural height in points.
    double height();

    /// Draws itself.
    ///
    /// @param page where to; colors and positions of the page are kept as they were
    /// @param shelf fonts for words
    /// @param x left edge in points from the page's left
    /// @param top upper edge in points from the page's **bottom**
    /// @param scale of its natural size
    void draw(PdfContentByte page, FontShelf shelf, double x, double top, double scale);
}
