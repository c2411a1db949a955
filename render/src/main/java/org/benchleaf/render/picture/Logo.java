package org.benchleaf.render.picture;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import javax.imageio.ImageIO;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Reading;

/// A shop's logo, fit to be printed and shown: upright pixels on white, without loss, freed of all that its file may
/// have brought along. Immutable.
public final class Logo {
    /// Largest file in bytes.
    public static final int LARGEST = 5_000_000;

    /// The longer side of what is kept, in pixels: 600 to the inch on 65 mm, the widest that any page shows.
    static final int LONG_SIDE = 1536;

    /// A logo that is longer than this times its other side cannot be read where there is room for it.
    private static final double MOST_ASPECT = 8;

    private final String file;
    private final byte[] png;
    private final int width;
    private final int height;

    private Logo(String file, byte[] png, int width, int height) {
        this.file = file;
        this.png = png;
        this.width = width;
        this.height = height;
    }

    /// Reads a PNG, JPEG or SVG. A drawing is turned into dots here, once: what it may refer to is never opened.
    ///
    /// @param name of the file, for messages
    /// @return the logo, or `logo.too-large`, `logo.unreadable` or `logo.shape`
    public static Reading<Logo> read(byte[] file, String name) {
        if (file.length > LARGEST) {
            return new Reading.Refused<>(Problem.of("logo.too-large", name).with("size", file.length + " bytes"));
        }
        Reading<BufferedImage> pixels = SvgPixels.isSvg(file)
                ? SvgPixels.read(file, name, LONG_SIDE)
                : PictureReader.pixels(file, name, LONG_SIDE);
        return switch (pixels) {
            case Reading.Refused<BufferedImage>(Problem problem) ->
                new Reading.Refused<>(Problem.of(problem.key().replace("photograph.", "logo."), name)
                        .with("size", problem.details().getOrDefault("size", "")));
            case Reading.Read<BufferedImage>(BufferedImage image) -> of(image, name);
        };
    }

    private static Reading<Logo> of(BufferedImage image, String name) {
        double aspect = image.getWidth() / (double) image.getHeight();
        if (aspect > MOST_ASPECT || aspect < 1 / MOST_ASPECT) {
            return new Reading.Refused<>(
                    Problem.of("logo.shape", name).with("size", image.getWidth() + " × " + image.getHeight()));
        }
        ByteArrayOutputStream png = new ByteArrayOutputStream(64 * 1024);
        try {
            ImageIO.write(image, "png", png);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return Reading.of(new Logo(name, png.toByteArray(), image.getWidth(), image.getHeight()));
    }

    /// A PNG without anything but its pixels.
    public byte[] png() {
        return png.clone();
    }

    /// Of its file in the workspace.
    public String file() {
        return file;
    }

    /// Width by height.
    public double aspect() {
        return width / (double) height;
    }

    /// In pixels.
    public int width() {
        return width;
    }

    /// Width in mm at which it fills a box without reaching beyond.
    public double widthIn(double mostWidthMm, double mostHeightMm) {
        return Math.min(mostWidthMm, mostHeightMm * aspect());
    }

    /// Its name and what tells it from every other logo: two that look the same are the same in print.
    @Override
    public String toString() {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(png);
            return file + "@" + HexFormat.of().formatHex(digest, 0, 8);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
