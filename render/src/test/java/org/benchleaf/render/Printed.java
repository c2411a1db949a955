package org.benchleaf.render;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/// A print read back with another library than the one that wrote it.
final class Printed implements AutoCloseable {
    /// Something that prints into a stream.
    interface Job {
        void print(OutputStream out);
    }

    private final byte[] bytes;
    private final PDDocument document;

    private Printed(byte[] bytes) throws IOException {
        this.bytes = bytes;
        this.document = Loader.loadPDF(bytes);
    }

    static Printed of(Job job) throws IOException {
        return new Printed(bytes(job));
    }

    static byte[] bytes(Job job) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        job.print(out);
        return out.toByteArray();
    }

    byte[] bytes() {
        return bytes;
    }

    PDDocument document() {
        return document;
    }

    int pages() {
        return document.getNumberOfPages();
    }

    double widthMm(int page) {
        return document.getPage(page).getMediaBox().getWidth() * 25.4 / 72;
    }

    double heightMm(int page) {
        return document.getPage(page).getMediaBox().getHeight() * 25.4 / 72;
    }

    /// Text of one page, counted from 0, line by line across it.
    String text(int page) throws IOException {
        return text(page, true);
    }

    /// The same in the order in which it is painted: words beside a figure are not mixed with those in it.
    String painted(int page) throws IOException {
        return text(page, false);
    }

    private String text(int page, boolean across) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setSortByPosition(across);
        stripper.setStartPage(page + 1);
        stripper.setEndPage(page + 1);
        return stripper.getText(document).replace('\u00A0', ' ');
    }

    /// Names of the fonts without the tag of the subset; those not embedded end in ` (not embedded)`.
    TreeSet<String> fonts() throws IOException {
        TreeSet<String> names = new TreeSet<>();
        for (PDPage page : document.getPages()) {
            for (COSName name : page.getResources().getFontNames()) {
                PDFont font = page.getResources().getFont(name);
                names.add(font.getName().replaceAll("^[A-Z]{6}\\+", "") + (font.isEmbedded() ? "" : " (not embedded)"));
            }
        }
        return names;
    }

    /// Places of the glyphs of a page.
    List<TextPosition> glyphs(int page) throws IOException {
        List<TextPosition> glyphs = new ArrayList<>();
        PDFTextStripper stripper = new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition text) {
                glyphs.add(text);
            }
        };
        stripper.setStartPage(page + 1);
        stripper.setEndPage(page + 1);
        stripper.getText(document);
        return glyphs;
    }

    /// A page as dots.
    BufferedImage image(int page, int dpi) throws IOException {
        return new PDFRenderer(document).renderImageWithDPI(page, dpi);
    }

    /// The QR code in a part of a picture; places in mm from the top left.
    static String decode(BufferedImage image, int dpi, double left, double top, double width, double height)
            throws Exception {
        int x = (int) Math.max(0, left / 25.4 * dpi);
        int y = (int) Math.max(0, top / 25.4 * dpi);
        int w = (int) Math.min(image.getWidth() - x, width / 25.4 * dpi);
        int h = (int) Math.min(image.getHeight() - y, height / 25.4 * dpi);
        int[] pixels = image.getRGB(x, y, w, h, null, 0, w);
        BinaryBitmap bitmap = new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(w, h, pixels)));
        return new QRCodeReader()
                .decode(bitmap, Map.of(DecodeHintType.TRY_HARDER, true))
                .getText();
    }

    @Override
    public void close() throws IOException {
        document.close();
    }
}
