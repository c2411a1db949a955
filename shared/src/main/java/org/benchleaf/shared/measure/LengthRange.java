package org.benchleaf.shared.measure;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.shared.Reading;

/// The span of a length, such as the height that a plant reaches, in whole centimetres.
///
/// Lists give feet, inches, metres or centimetres; the number is converted once, here (1 in = 2.54 cm exactly,
/// NIST SP 811, 2008, app. B.8), and the unit is then gone.
///
/// @param lowCm usual low in cm, 1 or more
/// @param highCm usual high in cm, not below `lowCm`, at most 15,000 (no tree is taller)
/// @throws IllegalArgumentException when empty, upside down or taller than any tree
public record LengthRange(int lowCm, int highCm) {
    private static final int TALLEST_CM = 15_000;
    private static final double INCH_CM = 2.54;
    private static final double FOOT_CM = 30.48;
    private static final String NUMBER = "(\\d+(?:[.,]\\d+)?(?:\\s*[½¼¾])?|[½¼¾])";
    private static final String UNIT = "(ft|feet|foot|'|′|in|inch|inches|\"|″|cm|m|mm|metres?|meters?)";
    private static final Pattern FEET_AND_INCHES =
            Pattern.compile("(\\d+)\\s*(?:ft|feet|foot|'|′)\\s*(\\d+)\\s*(?:in|inches|\"|″)");
    private static final Pattern WRITTEN =
            Pattern.compile(NUMBER + "\\s*" + UNIT + "?(?:\\s*(?:-|–|—|to)\\s*" + NUMBER + "\\s*" + UNIT + "?)?");

    public LengthRange {
        if (!isSpan(lowCm, highCm)) {
            throw new IllegalArgumentException(
                    "length must be 1 to 15000 cm, low before high; got %d-%d cm".formatted(lowCm, highCm));
        }
    }

    public static LengthRange ofFeet(double low, double high) {
        return new LengthRange(roundCm(low * FOOT_CM), roundCm(high * FOOT_CM));
    }

    /// Reads `6-8 ft`, `18-24"`, `60–90 cm`, `1.5-2 m`, `4 ft 6 in`, `18 in - 2 ft` or a single `3 m`.
    ///
    /// A number without any unit is refused: nobody can tell feet from metres.
    public static Reading<LengthRange> read(String text) {
        return read(text, Optional.empty());
    }

    /// Reads the same forms, and bare numbers in the unit that the column is known to hold (`ft`, `in`, `m`, `cm`).
    public static Reading<LengthRange> read(String text, String unitOfColumn) {
        return read(text, Optional.of(unitOfColumn));
    }

    private static Reading<LengthRange> read(String text, Optional<String> unitOfColumn) {
        String wanted = text.strip().toLowerCase(Locale.ROOT);
        Matcher both = FEET_AND_INCHES.matcher(wanted);
        if (both.matches()) {
            double cm = Integer.parseInt(both.group(1)) * FOOT_CM + Integer.parseInt(both.group(2)) * INCH_CM;
            return span(text, cm, cm);
        }
        Matcher matcher = WRITTEN.matcher(wanted);
        if (!matcher.matches()) {
            return Reading.refused("length.unknown", text);
        }
        boolean single = matcher.group(3) == null;
        Optional<String> lastUnit = Optional.ofNullable(single ? matcher.group(2) : matcher.group(4))
                .or(() -> unitOfColumn);
        if (lastUnit.isEmpty()) {
            return Reading.refused("length.unit", text);
        }
        String firstUnit = Optional.ofNullable(matcher.group(2)).orElse(lastUnit.get());
        double low = number(matcher.group(1)) * centimetresIn(firstUnit);
        double high = single ? low : number(matcher.group(3)) * centimetresIn(lastUnit.get());
        return span(text, low, high);
    }

    private static Reading<LengthRange> span(String text, double low, double high) {
        if (low > high) {
            return Reading.refused("length.reversed", text);
        }
        int lowCm = roundCm(low);
        int highCm = roundCm(high);
        return isSpan(lowCm, highCm)
                ? Reading.of(new LengthRange(lowCm, highCm))
                : Reading.refused("length.range", text);
    }

    private static boolean isSpan(int lowCm, int highCm) {
        return lowCm >= 1 && lowCm <= highCm && highCm <= TALLEST_CM;
    }

    private static int roundCm(double cm) {
        return (int) Math.min(Integer.MAX_VALUE, Math.round(cm));
    }

    private static double number(String digits) {
        double fraction = digits.contains("½") ? 0.5 : digits.contains("¼") ? 0.25 : digits.contains("¾") ? 0.75 : 0;
        String whole = digits.replaceAll("[½¼¾\\s]", "").replace(',', '.');
        return (whole.isEmpty() ? 0 : Double.parseDouble(whole)) + fraction;
    }

    private static double centimetresIn(String unit) {
        return switch (unit) {
            case "ft", "feet", "foot", "'", "′" -> FOOT_CM;
            case "in", "inch", "inches", "\"", "″" -> INCH_CM;
            case "mm" -> 0.1;
            case "cm" -> 1;
            default -> 100;
        };
    }

    /// Middle of the span in cm.
    public double middleCm() {
        return (lowCm + highCm) / 2.0;
    }

    /// `90-150 cm`, the form in which it is stored.
    @Override
    public String toString() {
        return lowCm == highCm ? lowCm + " cm" : lowCm + "-" + highCm + " cm";
    }
}
