package org.benchleaf.shared.plan;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.shared.Reading;

/// The area of a bed.
///
/// @param squareCm in square centimetres, above 0, at most 1e12 (a hundred square kilometres)
public record BedArea(double squareCm) {
    private static final double MOST = 1e12;
    private static final double SQUARE_FOOT = Measured.FOOT_CM * Measured.FOOT_CM;
    private static final double SQUARE_YARD = 9 * SQUARE_FOOT;
    private static final Pattern SIDES = Pattern.compile("(.+?)\\s*(?:x|×|by)\\s*(.+)");
    private static final Pattern AREA = Pattern.compile(
            "(\\d+(?:,\\d{3})*(?:\\.\\d+)?)\\s*(sq\\.?\\s*ft|square feet|ft2|ft²|sq\\.?\\s*yd|square yards?|yd2|yd²|sq\\.?\\s*m|square met(?:er|re)s?|m2|m²)");

    public BedArea {
        if (!(squareCm > 0 && squareCm <= MOST)) {
            throw new IllegalArgumentException("an area is above 0 and at most 1e12 square cm; got " + squareCm);
        }
    }

    /// Reads `200 sq ft`, `18 m2`, `20 sq yd`, `10 x 20 ft`, `4 ft 6 in x 12 ft`.
    public static Reading<BedArea> read(String text) {
        String wanted = text.strip().toLowerCase(Locale.ROOT);
        Matcher area = AREA.matcher(wanted);
        if (area.matches()) {
            double number = Double.parseDouble(area.group(1).replace(",", ""));
            String unit = area.group(2);
            double size = unit.contains("y") ? SQUARE_YARD : unit.contains("f") ? SQUARE_FOOT : 10_000;
            return of(text, number * size);
        }
        Matcher sides = SIDES.matcher(wanted);
        if (!sides.matches()) {
            return Reading.refused("area.unknown", text);
        }
        OptionalDouble second = Measured.cm(sides.group(2));
        String unit = sides.group(2).replaceAll("[\\d.\\s]", "");
        OptionalDouble first = Measured.cm(sides.group(1));
        if (first.isEmpty()) {
            first = Measured.cm(sides.group(1) + " " + unit); // 10 x 20 ft
        }
        return first.isPresent() && second.isPresent()
                ? of(text, first.getAsDouble() * second.getAsDouble())
                : Reading.refused("area.unknown", text);
    }

    private static Reading<BedArea> of(String text, double squareCm) {
        return squareCm > 0 && squareCm <= MOST
                ? Reading.of(new BedArea(squareCm))
                : Reading.refused("area.unknown", text);
    }

    public static BedArea ofSquareFeet(double squareFeet) {
        return new BedArea(squareFeet * SQUARE_FOOT);
    }

    public double squareFeet() {
        return squareCm / SQUARE_FOOT;
    }
}
