package org.benchleaf.render;

/// How pages are put on a printer or press.
///
/// @param bleedMm how far ink reaches beyond the edge at which the page is trimmed; 0 to 10
/// @param cropMarks whether a card, sign or sheet of labels stands on larger paper, with marks where to cut and a bar
///     of 100 mm to check the size by; other documents are not cut
/// @param calibration puts right what the printer does wrong
/// @throws IllegalArgumentException when the bleed is out of its range, or there is one without marks
public record PressSettings(double bleedMm, boolean cropMarks, Calibration calibration) {
    /// Plain paper, a printer that does nothing wrong.
    public static final PressSettings PLAIN = new PressSettings(0, false, Calibration.NONE);

    /// The bleed that presses ask for; common practice, no source.
    public static final double USUAL_BLEED_MM = 3;

    /// Room around the trimmed page for marks and bar.
    private static final double SLUG_MM = 12;

    public PressSettings {
        if (!(bleedMm >= 0 && bleedMm <= 10) || bleedMm > 0 && !cropMarks) {
            throw new IllegalArgumentException(
                    "a bleed is 0 to 10 mm, and there are marks where it ends; got " + bleedMm);
        }
    }

    /// Paper beyond the trimmed page on each side in mm.
    public double slugMm() {
        return cropMarks ? SLUG_MM : 0;
    }
}
