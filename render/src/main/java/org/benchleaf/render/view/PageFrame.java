package org.benchleaf.render.view;

import org.benchleaf.render.SheetFormat;

/// The room that a page of a long document leaves for its blocks, in mm.
///
/// @param width of the text
/// @param height of the text, the line at the foot left out
public record PageFrame(double width, double height) {
    /// As in the style sheet of documents.
    static final double SIDE = 14;

    static final double TOP = 13;
    static final double BOTTOM = 19;

    /// Kept free against differences in rounding between what is measured here and what the engine lays out.
    private static final double SPARE = 3;

    private static final double ENDLESS = 1e9;

    public static PageFrame of(SheetFormat format) {
        return new PageFrame(format.widthMm() - 2 * SIDE, format.heightMm() - TOP - BOTTOM - SPARE);
    }

    /// A page that never ends, for the web.
    public static PageFrame endless() {
        return new PageFrame(of(SheetFormat.LETTER).width(), ENDLESS);
    }

    double widthPt() {
        return width / TextBlock.POINT_MM;
    }
}
