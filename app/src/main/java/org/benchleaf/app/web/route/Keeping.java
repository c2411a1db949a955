package org.benchleaf.app.web.route;

import java.util.Locale;

/// How long an answer may be kept and shown again.
public enum Keeping {
    /// Caches keep it and ask each time whether it is still true: pages change with every sale.
    ASK_FIRST("no-cache"),
    /// The same, in the browser of the one who asked only.
    ASK_FIRST_PRIVATELY("private, no-cache"),
    /// For an hour: photographs.
    AN_HOUR("public, max-age=3600"),
    /// For ever: its address changes with its content.
    FOREVER("public, max-age=31536000, immutable"),
    /// Not at all: what staff sees.
    NEVER("no-store");

    private final String header;

    Keeping(String header) {
        this.header = header;
    }

    /// The header Cache-Control.
    public String header() {
        return header;
    }

    /// Whether answers carry a strong ETag, so that they are not sent twice.
    public boolean tagged() {
        return this != NEVER;
    }

    /// How it is told in the printed table.
    public String text() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
