package org.benchleaf.render;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import javax.imageio.ImageIO;

/// Stand-ins for photographs, drawn here: leaves over leaves, the same in every run. `lying.jpg`, `standing.jpg`,
/// `wide.png`, and `broken.jpg` that is none.
final class SamplePhotos implements Photographs {
    private final Map<String, byte[]> files = Map.of(
            "lying.jpg", leaves(1800, 1200, "jpg"),
            "standing.jpg", leaves(1200, 1800, "jpg"),
            "wide.png", leaves(1600, 500, "png"),
            "broken.jpg", "not a picture".getBytes(java.nio.charset.StandardCharsets.UTF_8));

    @Override
    public Optional<byte[]> find(String file) {
        return Optional.ofNullable(files.get(file));
    }

    @Override
    public Optional<Stamp> stamp(String file) {
        return find(file).map(bytes -> new Stamp(bytes.length, 0));
    }

    @Override
    public String where() {
        return "photographs";
    }

    /// A picture whose upper left corner is white, so that a test can see which way is up.
    static byte[] leaves(int width, int height, String format) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setColor(new Color(0x24351F));
        graphics.fillRect(0, 0, width, height);
        Random random = new Random(7);
        for (int leaf = 0; leaf < 900; leaf++) {
            graphics.setColor(Color.getHSBColor(0.22f + random.nextFloat() * 0.12f, 0.55f, 0.25f + leaf / 900f * 0.5f));
            var turned =
                    java.awt.geom.AffineTransform.getTranslateInstance(random.nextInt(width), random.nextInt(height));
            turned.rotate(random.nextDouble() * Math.PI);
            graphics.fill(turned.createTransformedShape(new Ellipse2D.Double(-60, -22, 120, 44)));
        }
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, width / 8, height / 8);
        graphics.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, format, out);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return out.toByteArray();
    }
}
