package org.benchleaf.render.pdf;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.function.Consumer;
import org.benchleaf.render.PrintFinding;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.color.Srgb;
import org.jspecify.annotations.Nullable;
import org.xhtmlrenderer.css.parser.FSColor;
import org.xhtmlrenderer.css.parser.FSRGBColor;
import org.xhtmlrenderer.css.style.CalculatedStyle;
import org.xhtmlrenderer.layout.Layer;
import org.xhtmlrenderer.render.Box;
import org.xhtmlrenderer.render.InlineLayoutBox;
import org.xhtmlrenderer.render.InlineText;

/// Looks at a page that is laid out, before it is painted: whether its words stand out from what lies under them, and
/// whether its drawings are fit to print.
final class PageChecks {
    /// WCAG 2.x, success criterion 1.4.3.
    static final double LEAST_CONTRAST = 4.5;

    private static final Srgb PAPER = new Srgb(0xFF, 0xFF, 0xFF);

    private final PrintPage page;
    private final Consumer<PrintFinding> findings;
    private final Set<String> told = new HashSet<>();

    PageChecks(PrintPage page, Consumer<PrintFinding> findings) {
        this.page = page;
        this.findings = findings;
    }

    void check(Box root) {
        page.drawings()
                .values()
                .forEach(drawing -> drawing.faults()
                        .forEach(fault -> findings.accept(
                                PrintFinding.of(page.name(), fault.details().getOrDefault("field", "figure"), fault))));
        Layer layer = root.getLayer();
        if (layer != null) {
            contrast(layer);
        }
    }

    /// Blocks that are placed hang in layers of their own, not below the block they stand in.
    private void contrast(Layer layer) {
        Box master = layer.getMaster();
        contrast(master, under(master));
        layer.getChildren().forEach(this::contrast);
    }

    private static Srgb under(Box placed) {
        for (@Nullable Box box = placed.getContainingBlock(); box != null; box = box.getContainingBlock()) {
            CalculatedStyle style = box.getStyle();
            if (style != null && style.getBackgroundColor() instanceof FSRGBColor rgb && rgb.getAlpha() > 0) {
                return new Srgb(rgb.getRed(), rgb.getGreen(), rgb.getBlue());
            }
        }
        return PAPER;
    }

    private void contrast(Box box, Srgb under) {
        CalculatedStyle style = box.getStyle();
        Srgb own = style == null ? under : color(style.getBackgroundColor(), under);
        for (int at = 0; at < box.getChildCount(); at++) {
            contrast(box.getChild(at), own);
        }
        if (box instanceof InlineLayoutBox inline) {
            for (Object child : inline.getInlineChildren()) {
                if (child instanceof Box inner) {
                    contrast(inner, own);
                } else if (style != null
                        && child instanceof InlineText text
                        && !text.getSubstring().isBlank()) {
                    words(text.getSubstring(), color(style.getColor(), PAPER), own);
                }
            }
        }
    }

    private void words(String text, Srgb ink, Srgb under) {
        double contrast = ink.contrastWith(under);
        if (contrast < LEAST_CONTRAST && told.add(ink + " " + under)) {
            findings.accept(PrintFinding.of(page.name(), "color", hardlyStandsOut(text, contrast)));
        }
    }

    static Problem hardlyStandsOut(String text, double contrast) {
        return Problem.of("print.contrast", text.strip())
                .with("contrast", String.format(Locale.ROOT, "%.1f", Math.floor(contrast * 10) / 10));
    }

    private static Srgb color(@Nullable FSColor color, Srgb otherwise) {
        return color instanceof FSRGBColor rgb && rgb.getAlpha() > 0
                ? new Srgb(rgb.getRed(), rgb.getGreen(), rgb.getBlue())
                : otherwise;
    }
}
