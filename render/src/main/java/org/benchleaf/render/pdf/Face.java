package org.benchleaf.render.pdf;

import java.util.Locale;

/// The faces of type that pages are set in; in style sheets each is a `font-family` of its own, so that none can be
/// slanted or thickened by machine.
public enum Face {
    NAMES("newsreader-medium.ttf"),
    NAMES_ITALIC("newsreader-medium-italic.ttf"),
    NAMES_STRONG("newsreader-semibold.ttf"),
    NAMES_STRONG_ITALIC("newsreader-semibold-italic.ttf"),
    FACTS("source-sans-regular.ttf"),
    FACTS_ITALIC("source-sans-italic.ttf"),
    FACTS_STRONG("source-sans-semibold.ttf");

    private final String file;

    Face(String file) {
        this.file = file;
    }

    /// Key of the font in the content pack.
    public String key() {
        return "fonts/" + file;
    }

    /// The face of that name in style sheets.
    public static Face named(String family) {
        return switch (family) {
            case "names" -> NAMES;
            case "names-italic" -> NAMES_ITALIC;
            case "names-strong" -> NAMES_STRONG;
            case "names-strong-italic" -> NAMES_STRONG_ITALIC;
            case "facts" -> FACTS;
            case "facts-italic" -> FACTS_ITALIC;
            case "facts-strong" -> FACTS_STRONG;
            default -> throw new IllegalArgumentException("no face is called " + family);
        };
    }

    /// Its name in style sheets: `names-italic`.
    public String family() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
