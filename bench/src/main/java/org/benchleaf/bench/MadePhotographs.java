package org.benchleaf.bench;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.benchleaf.render.Photographs;
import org.benchleaf.render.page.BenchCard;
import org.benchleaf.render.page.Photo;

/// Forty made-up photographs of leaves, of the size that telephones make small.
final class MadePhotographs implements Photographs {
    private static final int KINDS = 40;
    private static final int WIDE = 1600;
    private static final int HIGH = 1200;

    private final Map<String, byte[]> files = IntStream.range(0, KINDS)
            .boxed()
            .collect(Collectors.toUnmodifiableMap(MadePhotographs::file, MadePhotographs::jpeg));

    private static String file(int number) {
        return "leaves-" + number + ".jpg";
    }

    /// A card that shows one of them.
    static BenchCard on(BenchCard card, int number) {
        return new BenchCard(
                card.title(),
                card.whyNow(),
                card.exposure(),
                card.waterNeed(),
                card.moisture(),
                card.hardiness(),
                card.height(),
                card.spread(),
                card.year(),
                card.cautions(),
                card.notices(),
                card.stockSize(),
                card.form(),
                card.price(),
                card.link(),
                card.shop(),
                Optional.of(new Photo(file(number % KINDS), "A nursery", "CC BY 4.0")));
    }

    private static byte[] jpeg(int number) {
        SplittableRandom random = new SplittableRandom(number);
        BufferedImage image = new BufferedImage(WIDE, HIGH, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        for (int leaf = 0; leaf < 6000; leaf++) {
            pen.setColor(new Color(random.nextInt(40, 120), random.nextInt(80, 190), random.nextInt(30, 80)));
            pen.fillOval(random.nextInt(WIDE), random.nextInt(HIGH), random.nextInt(10, 70), random.nextInt(6, 40));
        }
        pen.dispose();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "jpg", bytes);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }

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
        return "memory";
    }
}
