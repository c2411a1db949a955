package org.benchleaf.render;

/// Sizes of bench cards and of signs, one to a page, upright and lying.
public enum CardFormat {
    /// 5½ × 7 in.
    LARGE(139.7, 177.8),
    LARGE_WIDE(177.8, 139.7),
    /// 4 × 6 in.
    SMALL(101.6, 152.4),
    SMALL_WIDE(152.4, 101.6),
    /// 7 × 11 in.
    GRAND(177.8, 279.4),
    GRAND_WIDE(279.4, 177.8),
    A6(105, 148),
    A6_WIDE(148, 105),
    A5(148, 210),
    A5_WIDE(210, 148),
    /// 11 × 17 in, for the end of an aisle.
    SIGN(279.4, 431.8),
    SIGN_WIDE(431.8, 279.4),
    /// 297 × 420 mm, for the end of an aisle.
    A3(297, 420),
    A3_WIDE(420, 297);

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

    /// Whether it lies.
    public boolean isWide() {
        return widthMm > heightMm;
    }

    /// The same size lying.
    public CardFormat wide() {
        return isWide() ? this : valueOf(name() + "_WIDE");
    }
}
