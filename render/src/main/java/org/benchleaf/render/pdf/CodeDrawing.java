package org.benchleaf.render.pdf;

import java.util.List;
import java.util.Locale;
import org.benchleaf.render.code.CodeImage;
import org.benchleaf.shared.Problem;
import org.openpdf.text.pdf.PdfContentByte;

/// Draws a code as black rectangles, quiet zone included, on the grid of a printer's dots.
///
/// @param code the code
/// @param dots printer dots to a module
/// @param dpi printer dots to the inch
public record CodeDrawing(CodeImage code, int dots, int dpi) implements Drawing {
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
        double left = Math.round(x / dot()) * dot();
        double upper = Math.round(top / dot()) * dot();
        page.saveState();
        page.setGrayFill(0);
        // in whole modules, counted down from the upper left corner, so that nothing is rounded but the corner
        StringBuilder path = new StringBuilder(4096).append(matrix(dots * dot(), left, upper));
        for (CodeImage.Run run : code.runs()) {
            path.append(run.x())
                    .append(' ')
                    .append(run.y())
                    .append(' ')
                    .append(run.length())
                    .append(" 1 re\n");
        }
        page.setLiteral(path.append("f\n").toString());
        page.restoreState();
    }

    private static String matrix(double module, double left, double upper) {
        return String.format(Locale.ROOT, "%.5f 0 0 -%.5f %.4f %.4f cm\n", module, module, left, upper);
    }
}
