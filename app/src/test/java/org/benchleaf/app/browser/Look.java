package org.benchleaf.app.browser;

import java.util.Locale;

/// On what a page is looked at: a small telephone or an office screen, by day or by night.
public enum Look {
    PHONE_LIGHT(360, 740, false),
    PHONE_DARK(360, 740, true),
    DESK_LIGHT(1280, 900, false),
    DESK_DARK(1280, 900, true);

    private final int width;
    private final int height;
    private final boolean dark;

    Look(int width, int height, boolean dark) {
        this.width = width;
        this.height = height;
        this.dark = dark;
    }

    public int width() {
        return width;
    }

    public int height() {
        return height;
    }

    public boolean dark() {
        return dark;
    }

    public boolean isPhone() {
        return width < 600;
    }

    /// For file names.
    public String text() {
        return width + (dark ? "-dark" : "-light");
    }

    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
