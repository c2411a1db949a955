package org.benchleaf.shared.measure;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.shared.Reading;

/// The span of soil acidity a plant grows well in, as pH in tenths.
///
/// @param lowTenths 30 (pH 3.0) or more
/// @param highTenths 100 (pH 10.0) or less, not below `lowTenths`
public record PhRange(int lowTenths, int highTenths) {
    private static final Pattern WRITTEN = Pattern.compile(
            "(?:ph\\s*)?(\\d{1,2}(?:\\.\\d+)?)(?:\\s*(?:-|–|to)\\s*(\\d{1,2}(?:\\.\\d+)?))?", Pattern.CASE_INSENSITIVE);

    public PhRange {
        if (lowTenths < 30 || highTenths > 100 || lowTenths > highTenths) {
            throw new IllegalArgumentException(
                    "pH must be 3.0 to 10.0, low before high; got %s".formatted(written(lowTenths, highTenths)));
        }
    }

    /// Reads `5.0-6.5`, `pH 4.5 to 6`.
    public static Reading<PhRange> read(String text) {
        Matcher matcher = WRITTEN.matcher(text.strip());
        if (!matcher.matches()) {
            return Reading.refused("ph.unknown", text);
        }
        int low = tenths(matcher.group(1));
        int high = matcher.group(2) == null ? low : tenths(matcher.group(2));
        if (low < 30 || high > 100) {
            return Reading.refused("ph.unknown", text);
        }
        return low > high ? Reading.refused("ph.reversed", text) : Reading.of(new PhRange(low, high));
    }

    private static int tenths(String number) {
        return (int) Math.round(Double.parseDouble(number) * 10);
    }

    private static String written(int low, int high) {
        return low == high ? tenth(low) : tenth(low) + "-" + tenth(high);
    }

    private static String tenth(int tenths) {
        return String.format(Locale.ROOT, "%.1f", tenths / 10.0);
    }

    /// `5.0-6.5`
    @Override
    public String toString() {
        return written(lowTenths, highTenths);
    }
}
