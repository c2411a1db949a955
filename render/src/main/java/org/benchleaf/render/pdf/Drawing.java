package org.benchleaf.render.pdf;

import java.util.List;
import org.benchleaf.shared.Problem;
import org.openpdf.text.pdf.PdfContentByte;

/// Something drawn as vectors into the place of an `img` whose `src` is its key.
public interface Drawing {
    /// Natural width in points.
    double width();

    /// Natural height in points.
    double height();

    /// All that it says, in words, for those who cannot see it; empty for ornament, and for an icon beside its words.
    default String alternative() {
        return "";
    }

    /// The same for a page of the web, as HTML of our own; empty when it has no place there.
    ///
    /// @param id that nothing else on the page has
    /// @param words that stand for it
    default String markup(String id, String words) {
        return "";
    }

    /// What makes it unfit to print; each names its `field`.
    default List<Problem> faults() {
        return List.of();
    }

    /// Draws itself.
    ///
    /// @param page where to; colors and positions of the page are kept as they were
    /// @param shelf fonts for words
    /// @param x left edge in points from the page's left
    /// @param top upper edge in points from the page's **bottom**
    /// @param scale of its natural size
    void draw(PdfContentByte page, FontShelf shelf, double x, double top, double scale);
}
