package org.benchleaf.render;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/// A page of a finished PDF as it will look on paper, for the screen. It is drawn by another reader of PDF than the
/// program that wrote it, so that what is seen is what stands in the file.
public final class PagePicture {
    private static final int MOST_PIXELS = 2000;

    private PagePicture() {}

    /// A page as PNG.
    ///
    /// @param page from 1; beyond the last one the last is drawn
    /// @param width in pixels, 50 to 2000
    /// @throws IllegalArgumentException when the width is out of its range
    public static byte[] png(Path pdf, int page, int width) {
        if (width < 50 || width > MOST_PIXELS) {
            throw new IllegalArgumentException("a picture is 50 to 2000 pixels wide; got " + width);
        }
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            int index = Math.clamp(page - 1, 0, document.getNumberOfPages() - 1);
            float points = document.getPage(index).getCropBox().getWidth();
            BufferedImage picture = new PDFRenderer(document).renderImage(index, width / points, ImageType.RGB);
            ByteArrayOutputStream png = new ByteArrayOutputStream();
            ImageIO.write(picture, "png", png);
            return png.toByteArray();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
