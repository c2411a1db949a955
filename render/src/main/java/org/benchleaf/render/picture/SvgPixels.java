package org.benchleaf.render.picture;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.parser.resources.ResourcePolicy;
import com.github.weisj.jsvg.view.FloatSize;
import com.github.weisj.jsvg.view.ViewBox;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.benchleaf.shared.Reading;
import org.jspecify.annotations.Nullable;

/// Turns an SVG into dots. Nothing it refers to is opened; one with a document type is refused, for that is where
/// bombs and foreign files hide.
final class SvgPixels {
    /// So much of the file is looked at to tell what it is.
    private static final int HEAD = 4096;

    private SvgPixels() {}

    static boolean isSvg(byte[] file) {
        String head = new String(file, 0, Math.min(file.length, HEAD), StandardCharsets.UTF_8);
        return head.stripLeading().startsWith("<") && head.contains("<svg");
    }

    /// @param longSide of what comes out, in pixels
    static Reading<BufferedImage> read(byte[] file, String name, int longSide) {
        String text = new String(file, StandardCharsets.UTF_8).toUpperCase(Locale.ROOT);
        if (text.contains("<!DOCTYPE") || text.contains("<!ENTITY")) {
            return Reading.refused("logo.unreadable", name);
        }
        try {
            LoaderContext alone = LoaderContext.builder()
                    .externalResourcePolicy(ResourcePolicy.DENY_ALL)
                    .build();
            @Nullable SVGDocument drawing = new SVGLoader().load(new ByteArrayInputStream(file), null, alone);
            FloatSize size = drawing == null ? new FloatSize(0, 0) : drawing.size();
            if (drawing == null || !(size.width > 0 && size.height > 0)) {
                return Reading.refused("logo.unreadable", name);
            }
            return Reading.of(dots(drawing, size, longSide));
        } catch (RuntimeException broken) {
            // a broken drawing makes the engine throw what it likes; the person needs to hear of the file
            return Reading.refused("logo.unreadable", name);
        }
    }

    private static BufferedImage dots(SVGDocument drawing, FloatSize size, int longSide) {
        double scale = longSide / (double) Math.max(size.width, size.height);
        int width = Math.max(1, (int) Math.round(size.width * scale));
        int height = Math.max(1, (int) Math.round(size.height * scale));
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, width, height);
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        drawing.render((java.awt.@Nullable Component) null, graphics, new ViewBox(width, height));
        graphics.dispose();
        return image;
    }
}
