package org.benchleaf.render.pdf;

import java.util.List;
import org.benchleaf.render.code.CodeImage;
import org.benchleaf.shared.Problem;
import org.openpdf.text.pdf.PdfContentByte;

/// Draws a code as black rectangles, quiet zone included, on the grid of a printer's dots.
///
/// @param code the code
/// @param dots printer dots to a module
/// @param dpi printer dots to the inch
/// @param path its dark modules as PDF draws them, in modules; made by whoever measures, not by the one who writes
public record CodeDrawing(CodeImage code, int dots, int dpi, String path) implements Drawing {
    /// Each rectangle keeps this much of a module away from its edges: where arithmetic puts an edge a hair
    /// beyond a dot of the printer, that dot would be printed too, for any dot that is touched is painted
    /// (ISO 32000-1, 10.6.5, from memory).
    static final double INSET = 0.005;

    private static final String LESS = ".99";

    public CodeDrawing(CodeImage code, int dots, int dpi) {
        this(code, dots, dpi, path(code));
    }

    /// On the grid of 300 dpi: 0.24 points to a dot, exact in two decimals, in which coordinates are written.
    public CodeDrawing(CodeImage code, int dots) {
        this(code, dots, 300);
    }

    private double dot() {
        return 72.0 / dpi;
    }

    @Override
    public List<Problem> faults() {
        return code.isReadable()
                ? List.of()
                : List.of(Problem.of("print.code-wrong", code.address()).with("field", "code"));
    }

    @Override
    public double width() {
        return code.sideInModules() * dots * dot();
    }

    @Override
    public double height() {
        return width();
    }

    /// Where the code leads.
    @Override
    public String alternative() {
        return code.address();
    }

    /// Who reads a page on a screen follows a link.
    @Override
    public String markup(String id, String words) {
        String address = Markup.escaped(code.address());
        return "<a href=\"" + address + "\">" + address + "</a>";
    }

    @Override
    public void draw(PdfContentByte page, FontShelf shelf, double x, double top, double scale) {
        if (Math.abs(scale - 1) > 0.002) {
            throw new IllegalStateException("a code is printed at its own size; got " + scale + " of it");
        }
        double module = dots * dot();
        double left = Math.round(x / dot()) * dot() + INSET * module;
        double upper = Math.round(top / dot()) * dot() - INSET * module;
        page.saveState();
        page.setGrayFill(0);
        String side = decimal(module);
        page.setLiteral(side + " 0 0 -" + side + ' ' + decimal(left) + ' ' + decimal(upper) + " cm\n");
        page.setLiteral(path);
        page.restoreState();
    }

    /// In whole modules, counted down from the upper left corner, so that nothing is rounded but the corner.
    private static String path(CodeImage code) {
        StringBuilder path = new StringBuilder(4096);
        for (CodeImage.Block block : code.blocks()) {
            path.append(block.x()).append(' ').append(block.y()).append(' ');
            less(block.width(), path);
            path.append(' ');
            less(block.height(), path);
            path.append(" re\n");
        }
        return path.append("f\n").toString();
    }

    private static void less(int modules, StringBuilder path) {
        if (modules > 1) {
            path.append(modules - 1);
        }
        path.append(LESS);
    }

    /// With five decimals, a tenth of what any printer can place; formatting would cost more than the rest of it.
    private static String decimal(double points) {
        long all = Math.round(points * 100_000);
        String digits = Long.toString(100_000 + all % 100_000);
        return all / 100_000 + "." + digits.substring(1);
    }
}
