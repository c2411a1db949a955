package org.benchleaf.shared.measure;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.shared.Reading;

/// The hardiness zones in which a plant is usually grown, coldest to warmest, both included.
///
/// Some sources give the cold end only. Such a range ends at the map's warmest half zone, 13b, and is written `3b+`:
/// nothing is said about warmth, which is not the same as doing well in it.
///
/// @param coldest the coldest half zone it lives through
/// @param warmest the warmest half zone it does well in; 13b when no warm limit is stated
/// @throws IllegalArgumentException when upside down
public record ZoneRange(HardinessZone coldest, HardinessZone warmest) {
    private static final HardinessZone WARMEST_OF_ALL = HardinessZone.of(13, 'b');
    private static final Pattern OPEN = Pattern.compile(
            "(?:usda\\s*)?(?:zones?\\s*)?(\\d{1,2})\\s*([ab]?)(?:\\s*\\+|\\s+(?:and|or)\\s+(?:warmer|up))",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern WRITTEN = Pattern.compile(
            "(?:usda\\s*)?(?:zones?\\s*)?(\\d{1,2})\\s*([ab]?)(?:\\s*(?:-|–|—|to|through|thru)\\s*(?:zone\\s*)?(\\d{1,2})\\s*([ab]?))?",
            Pattern.CASE_INSENSITIVE);

    public ZoneRange {
        if (coldest.compareTo(warmest) > 0) {
            throw new IllegalArgumentException("hardiness must run from cold to warm; got " + coldest + "-" + warmest);
        }
    }

    /// The range of a plant of which only the cold end is known.
    public static ZoneRange andWarmer(HardinessZone coldest) {
        return new ZoneRange(coldest, WARMEST_OF_ALL);
    }

    /// Reads `4-8`, `5b-9a`, `zones 4 to 8`, a single `6` (both halves) or `6a`, or `3b+` (`3b and warmer`).
    ///
    /// A whole zone as the cold end means its colder half, as the warm end its warmer half.
    public static Reading<ZoneRange> read(String text) {
        Matcher open = OPEN.matcher(text.strip());
        if (open.matches()) {
            return HardinessZone.read(open.group(1) + (open.group(2).isEmpty() ? "a" : open.group(2)))
                    .map(ZoneRange::andWarmer);
        }
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

    /// Whether a warm end is stated; without one, nobody knows how a plant does in zones warmer than its home.
    public boolean hasWarmLimit() {
        return warmest.compareTo(WARMEST_OF_ALL) < 0;
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

    /// `4-8` where both ends are whole zones, else `5b-9a`; `3b+` without a warm limit.
    @Override
    public String toString() {
        if (!hasWarmLimit()) {
            return (coldest.half() % 2 == 0 ? "" + coldest.zone() : coldest.toString()) + "+";
        }
        boolean whole = coldest.half() % 2 == 0 && warmest.half() % 2 == 1;
        if (whole) {
            return coldest.zone() == warmest.zone() ? "" + coldest.zone() : coldest.zone() + "-" + warmest.zone();
        }
        return coldest.equals(warmest) ? coldest.toString() : coldest + "-" + warmest;
    }
}
