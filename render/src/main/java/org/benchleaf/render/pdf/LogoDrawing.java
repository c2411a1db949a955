package org.benchleaf.render.pdf;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.benchleaf.render.picture.Logo;
import org.benchleaf.shared.Problem;
import org.openpdf.text.BadElementException;
import org.openpdf.text.Image;
import org.openpdf.text.pdf.PdfContentByte;

/// A shop's logo.
///
/// @param width in points
/// @param written the logos of the file by what they were made of: each is stored once
record LogoDrawing(Logo logo, double width, Map<Logo, Image> written) implements Drawing {
    /// Coarser than this shows its pixels at reading distance; common practice, no source.
    private static final int LEAST_DPI = 200;

    @Override
    public double height() {
        return width / logo.aspect();
    }

    @Override
    public List<Problem> faults() {
        double inches = width / 72;
        long dpi = (long) Math.floor(logo.width() / inches);
        return dpi >= LEAST_DPI
                ? List.of()
                : List.of(Problem.of("print.photo-coarse", logo.file())
                        .with("field", "logo")
                        .with("dpi", Long.toString(dpi))
                        .with("least", Integer.toString(LEAST_DPI))
                        .with("pixels", Long.toString((long) Math.ceil(inches * LEAST_DPI))));
    }

    @Override
    public String markup(String id, String words) {
        return Markup.picture("image/png", logo.png(), logo.aspect(), words);
    }

    @Override
    public void draw(PdfContentByte page, FontShelf shelf, double x, double top, double scale) {
        Image image = written.computeIfAbsent(logo, LogoDrawing::image);
        double high = height() * scale;
        try {
            page.addImage(image, (float) (width * scale), 0, 0, (float) high, (float) x, (float) (top - high));
        } catch (org.openpdf.text.DocumentException unwritable) {
            throw new IllegalStateException("a logo cannot be written: " + logo, unwritable);
        }
    }

    private static Image image(Logo logo) {
        try {
            return Image.getInstance(logo.png());
        } catch (BadElementException | IOException impossible) {
            throw new IllegalStateException("a logo of our own making: " + logo, impossible);
        }
    }
}
