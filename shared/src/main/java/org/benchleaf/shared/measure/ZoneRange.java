package org.benchleaf.shared.measure;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.shared.Reading;

/// The hardiness zones in which a plant is usually grown, coldest to warmest, both included.
///
/// @param coldest the coldest half zone it lives through
/// @param warmest the warmest half zone it does well in
/// @throws IllegalArgumentException when upside down
public record ZoneRange(HardinessZone coldest, HardinessZone warmest) {
    private static final Pattern WRITTEN = Pattern.compile(
            "(?:usda\\s*)?(?:zones?\\s*)?(\\d{1,2})\\s*([ab]?)(?:\\s*(?:-|–|—|to|through|thru)\\s*(?:zone\\s*)?(\\d{1,2})\\s*([ab]?))?",
            Pattern.CASE_INSENSITIVE);

    public ZoneRange {
        if (coldest.compareTo(warmest) > 0) {
            throw new IllegalArgumentException("hardiness must run from cold to warm; got " + coldest + "-" + warmest);
        }
    }

    /// Reads `4-8`, `5b-9a`, `zones 4 to 8`, or a single `6` (both halves) or `6a`.
    ///
    /// A whole zone as the cold end means its colder half, as the warm end its warmer half.
    public static Reading<ZoneRange> read(String text) {
        Matcher matcher = WRITTEN.matcher(text.strip());
        if (!matcher.matches()) {
            return Reading.refused("zone.unknown", text);
        }
        int low = Integer.parseInt(matcher.group(1));
        String highDigits = matcher.group(3) == null ? matcher.group(1) : matcher.group(3);
        String highLetter = matcher.group(3) == null ? matcher.group(2) : matcher.group(4);
        int high = Integer.parseInt(highDigits);
        if (low < 1 || low > 13 || high < 1 || high > 13) {
            return Reading.refused("zone.unknown", text);
        }
        HardinessZone coldest = HardinessZone.of(low, matcher.group(2).equalsIgnoreCase("b") ? 'b' : 'a');
        HardinessZone warmest = HardinessZone.of(high, highLetter.equalsIgnoreCase("a") ? 'a' : 'b');
        if (coldest.compareTo(warmest) > 0) {
            return Reading.refused("zone.reversed", text);
        }
        return Reading.of(new ZoneRange(coldest, warmest));
    }

    public boolean includes(HardinessZone zone) {
        return coldest.compareTo(zone) <= 0 && zone.compareTo(warmest) <= 0;
    }

    /// Half zones by which a site is too cold (negative) or too warm (positive); 0 when inside.
    public int halfZonesOutside(HardinessZone site) {
        if (site.compareTo(coldest) < 0) {
            return site.half() - coldest.half();
        }
        return Math.max(0, site.half() - warmest.half());
    }

    /// `4-8` where both ends are whole zones, else `5b-9a`.
    @Override
    public String toString() {
        boolean whole = coldest.half() % 2 == 0 && warmest.half() % 2 == 1;
        if (whole) {
            return coldest.zone() == warmest.zone() ? "" + coldest.zone() : coldest.zone() + "-" + warmest.zone();
        }
        return coldest.equals(warmest) ? coldest.toString() : coldest + "-" + warmest;
    }
}
