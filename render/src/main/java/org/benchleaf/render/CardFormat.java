package org.benchleaf.render;

/// Sizes of bench cards, upright, one card to a page.
public enum CardFormat {
    /// 5½ × 7 in.
    LARGE(139.7, 177.8),
    /// 4 × 6 in.
    SMALL(101.6, 152.4);

    private final double widthMm;
    private final double heightMm;

    CardFormat(double widthMm, double heightMm) {
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
