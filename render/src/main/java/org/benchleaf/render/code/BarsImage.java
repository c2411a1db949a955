package org.benchleaf.render.code;

import com.google.zxing.oned.EAN13Writer;
import java.util.ArrayList;
import java.util.List;
import org.benchleaf.shared.code.Gtin;

/// The bars of a trade number for a till: UPC-A for twelve digits, EAN-13 for thirteen, with the quiet zones that the
/// GS1
/// General Specifications ask for (from memory): eleven modules left and seven right of EAN-13, nine on both sides of
/// UPC-A.
public final class BarsImage {
    /// Modules of the bars themselves, guards included.
    private static final int BARS = 95;

    private static final double INCH_MM = 25.4;
    /// 80 % of the nominal 0.330 mm is the least that a till reads; from memory, GS1 General Specifications.
    private static final double LEAST_MM = 0.264;

    private static final double NOMINAL_MM = 0.33;

    private final boolean[] modules;
    private final String digits;
    private final int quietLeft;
    private final int quietRight;

    private BarsImage(boolean[] modules, String digits, int quietLeft, int quietRight) {
        this.modules = modules;
        this.digits = digits;
        this.quietLeft = quietLeft;
        this.quietRight = quietRight;
    }

    /// Whether a till has bars for it: twelve or thirteen digits, or more and zeros before them.
    public static boolean canBe(Gtin gtin) {
        return gtin.padded().startsWith("0");
    }

    /// @throws IllegalArgumentException when [#canBe] says no
    public static BarsImage of(Gtin gtin) {
        if (!canBe(gtin)) {
            throw new IllegalArgumentException("a till has no bars for " + gtin);
        }
        String padded = gtin.padded();
        if (padded.startsWith("00")) {
            String upc = padded.substring(2);
            // the bars of UPC-A are those of EAN-13 with a zero before
            return new BarsImage(new EAN13Writer().encode("0" + upc), upc, 9, 9);
        }
        String ean = padded.substring(1);
        return new BarsImage(new EAN13Writer().encode(ean), ean, 11, 7);
    }

    /// The digits as they are printed below.
    public String digits() {
        return digits;
    }

    /// Modules across, both quiet zones included.
    public int widthInModules() {
        return quietLeft + BARS + quietRight;
    }

    /// Dots to a module on a printer: as near to the nominal size as whole dots come, and never under the least.
    public static int dots(int dpi) {
        int least = (int) Math.ceil(LEAST_MM / INCH_MM * dpi);
        return Math.max(least, (int) Math.round(NOMINAL_MM / INCH_MM * dpi));
    }

    /// A bar.
    ///
    /// @param from modules from the left edge of the quiet zone
    /// @param width in modules
    /// @param guard whether it is one of the longer ones at the ends and in the middle
    public record Bar(int from, int width, boolean guard) {}

    /// All bars from left to right.
    public List<Bar> bars() {
        List<Bar> bars = new ArrayList<>();
        int at = 0;
        while (at < modules.length) {
            if (!modules[at]) {
                at++;
                continue;
            }
            int from = at;
            while (at < modules.length && modules[at]) {
                at++;
            }
            bars.add(new Bar(quietLeft + from, at - from, from < 3 || from >= 92 || from >= 45 && from < 50));
        }
        return bars;
    }
}
