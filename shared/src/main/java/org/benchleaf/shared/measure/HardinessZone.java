package org.benchleaf.shared.measure;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.shared.Reading;

/// A half zone of the USDA plant hardiness map, `1a` to `13b`, held as an integer from 0 to 25.
///
/// A half zone is 5 °F of average annual extreme minimum temperature wide; `1a` starts at -60 °F. The lower bound
/// belongs to the zone and the upper does not: the published ranges touch and no source says which half owns the
/// edge, so the choice is ours and is shown where a temperature is read.
///
/// Source: USDA Plant Hardiness Zone Map 2023 (3a to 11b as published, the others from memory of its legend).
///
/// @param half 0 for 1a, 1 for 1b ... 25 for 13b
public record HardinessZone(int half) implements Comparable<HardinessZone> {
    /// Degrees Fahrenheit at the cold edge of 1a.
    private static final int COLDEST_F = -60;

    private static final int HALF_ZONE_F = 5;
    private static final int COUNT = 26;
    private static final Pattern WRITTEN =
            Pattern.compile("(?:usda\\s*)?(?:zone\\s*)?(\\d{1,2})\\s*([ab])", Pattern.CASE_INSENSITIVE);

    public HardinessZone {
        if (half < 0 || half >= COUNT) {
            throw new IllegalArgumentException("hardiness half zone must be 0 (1a) to 25 (13b); got " + half);
        }
    }

    public static HardinessZone of(int zone, char letter) {
        return new HardinessZone((zone - 1) * 2 + (letter == 'b' ? 1 : 0));
    }

    /// The half zone of an average annual extreme minimum temperature.
    ///
    /// @param fahrenheit in °F
    /// @return empty outside the map: below -60 °F, or 70 °F and above
    public static Optional<HardinessZone> atFahrenheit(double fahrenheit) {
        if (Double.isNaN(fahrenheit) || fahrenheit < COLDEST_F || fahrenheit >= COLDEST_F + COUNT * HALF_ZONE_F) {
            return Optional.empty();
        }
        // bounds are whole degrees, so only the floor is exact: shifting first would round the last double below a
        // bound
        return Optional.of(new HardinessZone(((int) Math.floor(fahrenheit) - COLDEST_F) / HALF_ZONE_F));
    }

    /// The half zone of a temperature in °C, converted exactly first: Celsius bounds rounded to a tenth, as
    /// printed on maps, are off by up to 0.05 °C and would put a plant into the wrong half zone.
    public static Optional<HardinessZone> atCelsius(double celsius) {
        return atFahrenheit(celsius * 9.0 / 5.0 + 32.0);
    }

    /// Reads `6a`, `6 B`, `zone 6a`, `USDA zone 10b`.
    public static Reading<HardinessZone> read(String text) {
        Matcher matcher = WRITTEN.matcher(text.strip());
        if (!matcher.matches()) {
            return Reading.refused("zone.unknown", text);
        }
        int zone = Integer.parseInt(matcher.group(1));
        if (zone < 1 || zone > 13) {
            return Reading.refused("zone.unknown", text);
        }
        return Reading.of(of(zone, matcher.group(2).toLowerCase(Locale.ROOT).charAt(0)));
    }

    /// The whole zone, 1 to 13.
    public int zone() {
        return half / 2 + 1;
    }

    /// Cold edge in °F, inside the zone.
    public int minimumFahrenheit() {
        return COLDEST_F + half * HALF_ZONE_F;
    }

    /// Warm edge in °F, no longer inside.
    public int maximumFahrenheit() {
        return minimumFahrenheit() + HALF_ZONE_F;
    }

    /// Cold edge in °C, exact, not rounded.
    public double minimumCelsius() {
        return (minimumFahrenheit() - 32) * 5.0 / 9.0;
    }

    @Override
    public int compareTo(HardinessZone other) {
        return Integer.compare(half, other.half);
    }

    /// `6a`
    @Override
    public String toString() {
        return zone() + (half % 2 == 0 ? "a" : "b");
    }
}
