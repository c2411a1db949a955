package org.benchleaf.render.pdf;

import java.util.Map;
import org.benchleaf.content.MissingContent;
import org.w3c.dom.Element;

/// The drawings of the page in work, by the `src` of their `img`.
final class PageDrawings {
    private Map<String, Drawing> drawings = Map.of();

    /// Turns to the next page.
    void show(Map<String, Drawing> drawingsOfPage) {
        drawings = drawingsOfPage;
    }

    /// @throws MissingContent when the page has no such drawing
    Drawing of(Element image) {
        String key = image.getAttribute("src");
        Drawing drawing = drawings.get(key);
        if (drawing == null) {
            throw new MissingContent("picture " + key, "the figures of the page, and nothing else is drawn");
        }
        return drawing;
    }

    /// What speaks for an image without an `alt` of its own; empty for ornament.
    String alternative(Element image) {
        return of(image).alternative();
    }
}
