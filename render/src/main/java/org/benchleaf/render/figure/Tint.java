package org.benchleaf.render.figure;

import org.benchleaf.shared.color.Srgb;

/// Mixtures of colors, so that drawings need no transparency.
public final class Tint {
    private static final Srgb WHITE = new Srgb(255, 255, 255);
    private static final Srgb NIGHT = new Srgb(0x1C, 0x22, 0x1C);

    private Tint() {}

    /// @param share of `other`, 0 to 1
    public static Srgb mix(Srgb one, Srgb other, double share) {
        return new Srgb(
                channel(one.red(), other.red(), share),
                channel(one.green(), other.green(), share),
                channel(one.blue(), other.blue(), share));
    }

    public static Srgb lighter(Srgb color, double share) {
        return mix(color, WHITE, share);
    }

    public static Srgb darker(Srgb color, double share) {
        return mix(color, NIGHT, share);
    }

    /// The color, darkened as far as needed to read as words on white (WCAG 2.x, contrast 4.5).
    public static Srgb readable(Srgb color) {
        Srgb dark = color;
        for (int step = 1; step <= 20 && dark.contrastWith(WHITE) < 4.6; step++) {
            dark = darker(color, step / 20.0);
        }
        return dark;
    }

    private static int channel(int one, int other, double share) {
        return (int) Math.round(one + (other - one) * share);
    }
}
