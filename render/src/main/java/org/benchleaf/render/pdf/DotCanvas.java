package org.benchleaf.render.pdf;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import javax.imageio.ImageIO;
import org.benchleaf.render.code.BarsImage;
import org.benchleaf.render.code.CodeImage;

/// Black and white dots, each one of the printer's: codes and bars are drawn dot by dot, words without gray. Places in
/// mm.
public final class DotCanvas {
    private static final double INCH_MM = 25.4;
    /// Of the height of bars, in points, for their digits.
    private static final double DIGITS_POINT = 8;

    private final BufferedImage image;
    private final Graphics2D graphics;
    private final int dpi;
    private final DotFonts fonts;
    private final FontShelf shelf;

    public DotCanvas(double widthMm, double heightMm, int dpi, DotFonts fonts, FontShelf shelf) {
        this.dpi = dpi;
        this.fonts = fonts;
        this.shelf = shelf;
        this.image = new BufferedImage(dots(widthMm), dots(heightMm), BufferedImage.TYPE_BYTE_BINARY);
        this.graphics = image.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_OFF);
        graphics.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
        graphics.setColor(Color.BLACK);
    }

    private int dots(double mm) {
        return (int) Math.round(mm / INCH_MM * dpi);
    }

    /// A code or bars.
    public void draw(Drawing drawing, double leftMm, double topMm) {
        switch (drawing) {
            case CodeDrawing code -> code(code, dots(leftMm), dots(topMm));
            case BarsDrawing bars -> bars(bars, dots(leftMm), dots(topMm));
            default -> throw new IllegalArgumentException("a roll printer draws codes and bars only");
        }
    }

    private void code(CodeDrawing code, int left, int top) {
        int module = code.dots();
        for (CodeImage.Block block : code.code().blocks()) {
            graphics.fillRect(
                    left + block.x() * module,
                    top + block.y() * module,
                    block.width() * module,
                    block.height() * module);
        }
    }

    private void bars(BarsDrawing bars, int left, int top) {
        int module = BarsImage.dots(dpi);
        int tall = (int) Math.round(bars.tall() * dpi / 72);
        int digits = (int) Math.round(DIGITS_POINT * dpi / 72);
        for (BarsImage.Bar bar : bars.bars().bars()) {
            graphics.fillRect(
                    left + bar.from() * module, top, bar.width() * module, tall - (bar.guard() ? digits / 2 : digits));
        }
        String text = bars.bars().digits();
        double width = shelf.width(Face.FACTS, text, DIGITS_POINT) * dpi / 72;
        graphics.setFont(fonts.font(Face.FACTS, digits));
        graphics.drawString(
                text, (float) (left + (bars.bars().widthInModules() * module - width) / 2), top + tall - digits / 8f);
    }

    /// A piece of a line in one face.
    ///
    /// @param face its family, such as `names-strong`
    public record Piece(String face, String text) {}

    /// A line of type.
    ///
    /// @param size in points
    /// @param leading in points
    /// @param widthMm room for it
    public void line(
            List<Piece> pieces,
            double size,
            double leading,
            double leftMm,
            double widthMm,
            double topMm,
            boolean atTheRight) {
        double width = pieces.stream()
                .mapToDouble(piece -> shelf.width(face(piece), piece.text(), size))
                .sum();
        double point = dpi / 72.0;
        double x = leftMm / INCH_MM * dpi + (atTheRight ? widthMm / INCH_MM * dpi - width * point : 0);
        // the middle of the line lies where the middle of ascent and descent does
        double baseline = topMm / INCH_MM * dpi + (leading / 2 + size * 0.31) * point;
        for (Piece piece : pieces) {
            Font font = fonts.font(face(piece), size * point);
            graphics.setFont(font);
            graphics.drawString(piece.text(), (float) x, (float) baseline);
            x += shelf.width(face(piece), piece.text(), size) * point;
        }
    }

    private static Face face(Piece piece) {
        return Face.named(piece.face());
    }

    /// The picture as PNG, one bit a dot.
    public byte[] png() {
        graphics.dispose();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", bytes);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }
}
