package org.benchleaf.render.view;

import java.util.Map;
import java.util.Optional;
import org.benchleaf.render.pdf.Drawing;

/// The drawings of a document as HTML, for templates. Each time one is asked for it gets an id of its own, for a page
/// may show it often.
public final class WebFigures {
    private final Map<String, Drawing> drawings;
    private final Map<String, String> alternatives;
    private int shown;

    public WebFigures(Figures figures) {
        this.drawings = figures.drawings();
        this.alternatives = figures.alternatives();
    }

    /// @param key as on paper; empty HTML for one that is not there
    public String of(String key) {
        shown++;
        return Optional.ofNullable(drawings.get(key))
                .map(drawing -> drawing.markup("f" + shown, alternatives.getOrDefault(key, "")))
                .orElse("");
    }
}
