package org.benchleaf.shared.color;

import java.util.Locale;
import org.benchleaf.shared.Reading;

/// A color in sRGB (IEC 61966-2-1), eight bits a channel.
///
/// @param red 0 to 255
/// @param green 0 to 255
/// @param blue 0 to 255
public record Srgb(int red, int green, int blue) {
    public Srgb {
        if ((red | green | blue) < 0 || red > 255 || green > 255 || blue > 255) {
            throw new IllegalArgumentException(
                    "sRGB channels are 0 to 255; got %d, %d, %d".formatted(red, green, blue));
        }
    }

    /// Reads `#8B1E2D`.
    public static Reading<Srgb> read(String text) {
        if (!text.strip().matches("#[0-9A-Fa-f]{6}")) {
            return Reading.refused("color.hex", text);
        }
        int bits = Integer.parseInt(text.strip().substring(1), 16);
        return Reading.of(new Srgb(bits >> 16, bits >> 8 & 0xFF, bits & 0xFF));
    }

    /// The same color in CIE L\*a\*b\* under D65, for measuring distances.
    public Lab lab() {
        double r = linear(red);
        double g = linear(green);
        double b = linear(blue);
        // sRGB to XYZ (IEC 61966-2-1), divided by the D65 white point
        double x = curve((0.4124564 * r + 0.3575761 * g + 0.1804375 * b) / 0.95047);
        double y = curve(0.2126729 * r + 0.7151522 * g + 0.0721750 * b);
        double z = curve((0.0193339 * r + 0.1191920 * g + 0.9503041 * b) / 1.08883);
        return new Lab(116 * y - 16, 500 * (x - y), 200 * (y - z));
    }

    /// Relative luminance by WCAG 2.x, 0 (black) to 1 (white).
    public double luminance() {
        return 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue);
    }

    /// Contrast with another color by WCAG 2.x, 1 to 21. Compare it unrounded: 4.48 does not pass for 4.5.
    public double contrastWith(Srgb other) {
        double lighter = Math.max(luminance(), other.luminance());
        double darker = Math.min(luminance(), other.luminance());
        return (lighter + 0.05) / (darker + 0.05);
    }

    private static double linear(int channel) {
        double c = channel / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }

    private static double curve(double t) {
        return t > 216.0 / 24389 ? Math.cbrt(t) : (24389.0 / 27 * t + 16) / 116;
    }

    /// `#8B1E2D`
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "#%02X%02X%02X", red, green, blue);
    }
}
