package org.benchleaf.shared.plan;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// Reads lengths for planting without rounding them: a spacing of 18 in is 45.72 cm, not 46.
final class Measured {
    /// Exact: NIST SP 811 (2008), app. B.8.
    static final double INCH_CM = 2.54;

    static final double FOOT_CM = 30.48;

    private static final Pattern LENGTH = Pattern.compile(
            "(\\d+(?:\\.\\d+)?)\\s*(ft|foot|feet|'|in|inch|inches|\"|cm|m|metres?|meters?)(?:\\s*(\\d+(?:\\.\\d+)?)\\s*(?:in|inches|\"))?");

    private Measured() {}

    /// A length in cm: `18 in`, `1.5 ft`, `4 ft 6 in`, `45 cm`, `2 m`; empty for anything else or nothing.
    static OptionalDouble cm(String text) {
        Matcher matcher = LENGTH.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (!matcher.matches()) {
            return OptionalDouble.empty();
        }
        double number = Double.parseDouble(matcher.group(1));
        double unit = switch (matcher.group(2)) {
            case "ft", "foot", "feet", "'" -> FOOT_CM;
            case "in", "inch", "inches", "\"" -> INCH_CM;
            case "cm" -> 1;
            default -> 100;
        };
        double inches = matcher.group(3) == null ? 0 : Double.parseDouble(matcher.group(3)) * INCH_CM;
        double cm = number * unit + inches;
        return cm > 0 ? OptionalDouble.of(cm) : OptionalDouble.empty();
    }
}
