package org.benchleaf.render.view;

import java.util.Locale;

/// How much room a sheet gives to what; few facts make room for larger figures.
public enum Density {
    OPEN(84),
    ROOMY(66),
    USUAL(57),
    CLOSE(50),
    TIGHT(42);

    private final double ringMm;

    Density(double ringMm) {
        this.ringMm = ringMm;
    }

    /// Side of the year ring, and height of the size stand.
    public double ringMm() {
        return ringMm;
    }

    /// Its name in style sheets.
    public String style() {
        return name().toLowerCase(Locale.ROOT);
    }
}
