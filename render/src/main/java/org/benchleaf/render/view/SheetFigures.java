package org.benchleaf.render.view;

/// Where the figures of a product sheet stand, in mm. Without a photograph ring and stand share a row; with one, it
/// leads: beside it the ring over the stand, or, where facts are many, all three in a row.
///
/// @param ring side of the year ring
/// @param stand width of the size stand
/// @param standHeight its height
/// @param photoWidth of the photograph, 0 when there is none
/// @param photoHeight of the photograph
/// @param stacked whether ring and stand stand one under the other
public record SheetFigures(
        double ring, double stand, double standHeight, double photoWidth, double photoHeight, boolean stacked) {
    private static final double BETWEEN = 9;

    /// Height of a row of three that leaves the size stand wide enough.
    private static final double MOST_ROW = 46;

    /// Width for the ring's key beside it.
    private static final double KEY = 27;

    static SheetFigures alone(Density density, double inner) {
        double ring = density.ringMm();
        return new SheetFigures(ring, inner - ring - BETWEEN, ring, 0, 0, false);
    }

    /// @param aspect width by height; very wide and very tall photographs are cut to what the page can show
    static SheetFigures withPhoto(Density density, double inner, double aspect) {
        double tall = density.photoMm();
        if (tall == 0) {
            double row = Math.min(density.ringMm(), MOST_ROW);
            double width = row * Math.clamp(aspect, 0.75, 0.9);
            return new SheetFigures(row, inner - row - width - 2 * BETWEEN, row, width, row, false);
        }
        double width = Math.min(tall * Math.clamp(aspect, 0.72, 0.95), inner * 0.53);
        double beside = inner - width - BETWEEN;
        double ring = Math.min(tall * 0.5, beside - KEY);
        return new SheetFigures(ring, beside, tall - ring - 3, width, tall, true);
    }

    /// Of all together.
    public double height() {
        return Math.max(ring, photoHeight);
    }
}
