package org.benchleaf.render.view;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import org.benchleaf.render.figure.Figure;
import org.benchleaf.render.pdf.Drawing;
import org.benchleaf.render.pdf.FigureDrawing;
import org.benchleaf.render.pdf.LazyDrawing;

/// The drawings of a page, each with the words that stand for it where it cannot be seen.
public final class Figures {
    private final Map<String, Drawing> drawings = new LinkedHashMap<>();
    private final Map<String, String> alternatives = new LinkedHashMap<>();

    /// @param key the `src` of its `img`
    /// @param alternative all that it says, in words; empty for what only repeats the words beside it
    void put(String key, Drawing drawing, String alternative) {
        drawings.put(key, drawing);
        alternatives.put(key, alternative);
    }

    /// A figure speaks for itself.
    void put(String key, Figure figure) {
        put(key, new FigureDrawing(figure), figure.alternative());
    }

    /// A figure that is drawn only when its page is printed.
    void put(String key, double width, double height, Supplier<Figure> figure, String alternative) {
        put(key, new LazyDrawing(width, height, figure), alternative);
    }

    boolean has(String key) {
        return drawings.containsKey(key);
    }

    /// By the `src` of their `img`.
    public Map<String, Drawing> drawings() {
        return Map.copyOf(drawings);
    }

    /// Words by the `src` of the `img`.
    public Map<String, String> alternatives() {
        return Map.copyOf(alternatives);
    }
}
