package org.benchleaf.render;

/// Paper for whole-page sheets.
public enum SheetFormat {
    LETTER(215.9, 279.4),
    A4(210, 297);

    private final double widthMm;
    private final double heightMm;

    SheetFormat(double widthMm, double heightMm) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    public double widthMm() {
        return widthMm;
    }

    public double heightMm() {
        return heightMm;
    }
}
