package org.benchleaf.shared.rule;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.shared.Reading;
import org.benchleaf.shared.fact.Region;

/// Where a plant is shipped to or from.
///
/// @param region state or province
/// @param county without the word County; when it is not given, county rules can only be pointed at
public record Destination(Region region, Optional<String> county) {
    private static final Pattern REGION_FIRST = Pattern.compile("([^/]+)/([^/]+)");
    private static final Pattern COUNTY_FIRST = Pattern.compile("([^,]+),\\s*([^,]+)");

    public Destination {
        county = county.map(Destination::bare).filter(name -> !name.isEmpty());
    }

    public static Destination of(Region region) {
        return new Destination(region, Optional.empty());
    }

    /// Reads `PA`, `US-PA`, `Pennsylvania`, `US-NY / Suffolk`, `Suffolk County, NY`.
    public static Reading<Destination> read(String text) {
        Reading<Region> whole = Region.read(text);
        if (whole instanceof Reading.Read<Region>(Region region)) {
            return Reading.of(of(region));
        }
        Matcher regionFirst = REGION_FIRST.matcher(text.strip());
        if (regionFirst.matches()) {
            return in(regionFirst.group(1), regionFirst.group(2), text);
        }
        Matcher countyFirst = COUNTY_FIRST.matcher(text.strip());
        return countyFirst.matches()
                ? in(countyFirst.group(2), countyFirst.group(1), text)
                : Reading.refused("region.unknown", text);
    }

    private static Reading<Destination> in(String region, String county, String text) {
        Optional<Region> known = Region.read(region).toOptional();
        return known.isPresent() && !bare(county).isEmpty()
                ? Reading.of(new Destination(known.get(), Optional.of(county)))
                : Reading.refused("region.unknown", text);
    }

    static String bare(String county) {
        return county.strip().replaceFirst("(?i)\\s+(county|co\\.?|parish)$", "");
    }

    /// The form that [#read] reads back: `US-NY / Suffolk`.
    @Override
    public String toString() {
        return region.code() + county.map(name -> " / " + name).orElse("");
    }
}
