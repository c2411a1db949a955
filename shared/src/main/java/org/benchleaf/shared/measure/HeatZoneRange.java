package org.benchleaf.shared.measure;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.shared.Reading;

/// The AHS heat zones a plant bears: zones by the number of days a year above 86 °F (30 °C), 1 to 12.
///
/// Source: American Horticultural Society heat zone definitions.
///
/// @param low fewest heat days, 1 to 12
/// @param high most heat days, not below `low`
public record HeatZoneRange(int low, int high) {
    /// The most days above 86 °F in zones 1 to 11; zone 12 has no bound. Zone 1 is fewer than 1 day.
    private static final int[] MOST_DAYS = {0, 7, 14, 30, 45, 60, 90, 120, 150, 180, 210};

    private static final Pattern WRITTEN = Pattern.compile("(\\d{1,2})(?:\\s*(?:-|–|to)\\s*(\\d{1,2}))?");

    public HeatZoneRange {
        if (low < 1 || high > 12 || low > high) {
            throw new IllegalArgumentException("heat zones must be 1 to 12, low before high; got " + low + "-" + high);
        }
    }

    /// Reads `1-8`; `8-1`, the order in which the society prints them, means the same.
    public static Reading<HeatZoneRange> read(String text) {
        Matcher matcher = WRITTEN.matcher(text.strip());
        if (!matcher.matches()) {
            return Reading.refused("heat-zone.unknown", text);
        }
        int one = Integer.parseInt(matcher.group(1));
        int other = matcher.group(2) == null ? one : Integer.parseInt(matcher.group(2));
        if (Math.min(one, other) < 1 || Math.max(one, other) > 12) {
            return Reading.refused("heat-zone.unknown", text);
        }
        return Reading.of(new HeatZoneRange(Math.min(one, other), Math.max(one, other)));
    }

    /// The heat zone of a place.
    ///
    /// @param days days a year above 86 °F, 0 or more
    public static int zoneForDays(int days) {
        int zone = 1;
        while (zone <= MOST_DAYS.length && days > MOST_DAYS[zone - 1]) {
            zone++;
        }
        return zone;
    }

    @Override
    public String toString() {
        return low == high ? "" + low : low + "-" + high;
    }
}
