package org.benchleaf.render.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Iterator;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Reading;

/// Reads a photograph of a camera or telephone. What its header promises is checked before a pixel is decoded, so that
/// a small file cannot ask for gigabytes.
public final class PictureReader {
    /// Most pixels that are decoded; more than any telephone takes today.
    public static final long MOST_PIXELS = 120_000_000;

    /// The longer side of the picture that comes out, in pixels: 300 to the inch on 125 mm.
    public static final int LONG_SIDE = 1480;

    /// The same for what is printed larger: 250 to the inch on 300 mm, as wide as an A3 page.
    public static final int LARGE_SIDE = 2960;

    private static final Set<String> FORMATS = Set.of("jpeg", "png");
    private static final float QUALITY = 0.86f;

    private PictureReader() {}

    /// Reads a JPEG or PNG.
    ///
    /// @param file its bytes
    /// @param name for messages
    /// @return the picture, or `photograph.unreadable` or `photograph.too-large`
    public static Reading<Picture> read(byte[] file, String name) {
        return read(file, name, LONG_SIDE);
    }

    /// The same with more pixels or fewer.
    ///
    /// @param longSide the longer side of the picture that comes out, in pixels
    public static Reading<Picture> read(byte[] file, String name, int longSide) {
        return switch (pixels(file, name, longSide)) {
            case Reading.Refused<BufferedImage>(Problem problem) -> new Reading.Refused<>(problem);
            case Reading.Read<BufferedImage>(BufferedImage image) ->
                Reading.of(new Picture(jpeg(image), image.getWidth(), image.getHeight()));
        };
    }

    /// Upright pixels on white.
    static Reading<BufferedImage> pixels(byte[] file, String name, int longSide) {
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(file))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                return Reading.refused("photograph.unreadable", name);
            }
            ImageReader reader = readers.next();
            try {
                return FORMATS.contains(reader.getFormatName().toLowerCase(Locale.ROOT))
                        ? pixels(reader, in, file, name, longSide)
                        : Reading.refused("photograph.unreadable", name);
            } finally {
                reader.dispose();
            }
        } catch (IOException | RuntimeException broken) {
            // a broken file makes the decoder throw what it likes; the person needs to hear of the file
            return Reading.refused("photograph.unreadable", name);
        }
    }

    private static Reading<BufferedImage> pixels(
            ImageReader reader, ImageInputStream in, byte[] file, String name, int longSide) throws IOException {
        reader.setInput(in, true, true);
        int width = reader.getWidth(0);
        int height = reader.getHeight(0);
        if ((long) width * height > MOST_PIXELS) {
            return new Reading.Refused<>(
                    Problem.of("photograph.too-large", name).with("size", width + " × " + height));
        }
        ImageReadParam param = reader.getDefaultReadParam();
        int step = Math.max(1, Math.max(width, height) / (2 * longSide));
        param.setSourceSubsampling(step, step, 0, 0);
        BufferedImage upright = Orientation.of(file).turn(onWhite(reader.read(0, param)));
        return Reading.of(smaller(upright, longSide));
    }

    /// Plain RGB; what is see-through becomes white.
    private static BufferedImage onWhite(BufferedImage read) {
        BufferedImage plain = new BufferedImage(read.getWidth(), read.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = plain.createGraphics();
        graphics.drawImage(read, 0, 0, Color.WHITE, null);
        graphics.dispose();
        return plain;
    }

    private static BufferedImage smaller(BufferedImage image, int longSide) {
        double scale = longSide / (double) Math.max(image.getWidth(), image.getHeight());
        if (scale >= 1) {
            return image;
        }
        int width = Math.max(1, (int) Math.round(image.getWidth() * scale));
        int height = Math.max(1, (int) Math.round(image.getHeight() * scale));
        BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = small.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        graphics.drawImage(image, 0, 0, width, height, null);
        graphics.dispose();
        return small;
    }

    private static byte[] jpeg(BufferedImage image) {
        ImageWriter writer = Objects.requireNonNull(
                ImageIO.getImageWritersByFormatName("jpeg").next(), "a writer of JPEG");
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(256 * 1024);
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            writer.setOutput(out);
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionQuality(QUALITY);
            writer.write(null, new IIOImage(image, null, null), param);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
