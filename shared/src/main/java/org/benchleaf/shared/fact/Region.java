package org.benchleaf.shared.fact;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.benchleaf.shared.Reading;

/// A state, district or province of the United States or Canada, by its ISO 3166-2 code.
///
/// @param code for example `US-PA`; one of the codes known here
public record Region(String code) implements Comparable<Region> {
    /// Country, postal code and name; source: ISO 3166-2 (from memory).
    private static final Map<String, String> NAMES = names("""
            US AL Alabama
            US AK Alaska
            US AZ Arizona
            US AR Arkansas
            US CA California
            US CO Colorado
            US CT Connecticut
            US DE Delaware
            US DC District of Columbia
            US FL Florida
            US GA Georgia
            US HI Hawaii
            US ID Idaho
            US IL Illinois
            US IN Indiana
            US IA Iowa
            US KS Kansas
            US KY Kentucky
            US LA Louisiana
            US ME Maine
            US MD Maryland
            US MA Massachusetts
            US MI Michigan
            US MN Minnesota
            US MS Mississippi
            US MO Missouri
            US MT Montana
            US NE Nebraska
            US NV Nevada
            US NH New Hampshire
            US NJ New Jersey
            US NM New Mexico
            US NY New York
            US NC North Carolina
            US ND North Dakota
            US OH Ohio
            US OK Oklahoma
            US OR Oregon
            US PA Pennsylvania
            US RI Rhode Island
            US SC South Carolina
            US SD South Dakota
            US TN Tennessee
            US TX Texas
            US UT Utah
            US VT Vermont
            US VA Virginia
            US WA Washington
            US WV West Virginia
            US WI Wisconsin
            US WY Wyoming
            US PR Puerto Rico
            US VI US Virgin Islands
            CA AB Alberta
            CA BC British Columbia
            CA MB Manitoba
            CA NB New Brunswick
            CA NL Newfoundland and Labrador
            CA NS Nova Scotia
            CA NT Northwest Territories
            CA NU Nunavut
            CA ON Ontario
            CA PE Prince Edward Island
            CA QC Quebec
            CA SK Saskatchewan
            CA YT Yukon
            """);

    /// By code, postal code and name in small letters; where two share one, the United States come first.
    private static final Map<String, Region> BY_WRITTEN = byWritten();

    public Region {
        if (!NAMES.containsKey(code)) {
            throw new IllegalArgumentException("not a known state or province: " + code);
        }
    }

    /// Reads `PA`, `US-PA` or `Pennsylvania`.
    public static Reading<Region> read(String text) {
        Region region = BY_WRITTEN.get(text.strip().toLowerCase(Locale.ROOT));
        return region == null ? Reading.refused("region.unknown", text) : Reading.of(region);
    }

    /// Reads codes parted by blanks, commas or semicolons.
    public static Reading<Set<Region>> readSet(String text) {
        Set<Region> regions = new TreeSet<>();
        for (String piece : text.strip().split("[\\s,;|]+")) {
            Reading<Region> region = read(piece);
            if (region.toOptional().isEmpty()) {
                return Reading.refused("region.unknown", piece);
            }
            regions.add(region.orThrow());
        }
        return Reading.of(java.util.Collections.unmodifiableSet(regions));
    }

    /// The form that [#readSet] reads back: `US-PA US-NY`.
    public static String write(Collection<Region> regions) {
        return regions.stream().sorted().map(Region::code).collect(Collectors.joining(" "));
    }

    /// Every region, United States first.
    public static List<Region> all() {
        return NAMES.keySet().stream().map(Region::new).toList();
    }

    /// `Pennsylvania`
    public String name() {
        return NAMES.getOrDefault(code, code);
    }

    /// `PA`
    public String postalCode() {
        return code.substring(3);
    }

    private static Map<String, Region> byWritten() {
        Map<String, Region> regions = new LinkedHashMap<>();
        NAMES.forEach((code, name) -> {
            for (String written : List.of(code, code.substring(3), name)) {
                regions.putIfAbsent(written.toLowerCase(Locale.ROOT), new Region(code));
            }
        });
        return java.util.Collections.unmodifiableMap(regions);
    }

    private static Map<String, String> names(String table) {
        Map<String, String> names = new LinkedHashMap<>();
        for (String line : new ArrayList<>(table.strip().lines().toList())) {
            String[] parts = line.strip().split(" ", 3);
            names.put((parts[0] + "-" + parts[1]).toUpperCase(Locale.ROOT), parts[2]);
        }
        return java.util.Collections.unmodifiableMap(names);
    }

    @Override
    public int compareTo(Region other) {
        return code.compareTo(other.code);
    }

    @Override
    public String toString() {
        return code;
    }
}
