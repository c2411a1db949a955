package org.benchleaf.shared.rule;

import java.util.Locale;
import java.util.Optional;
import org.benchleaf.shared.Reading;
import org.benchleaf.shared.fact.Region;

/// Whose law it is: a country's, a state's or province's, or a county's.
///
/// @param country `US` or `CA`
/// @param region empty for the whole country
/// @param county empty for the whole region; needs a region
public record Jurisdiction(String country, Optional<Region> region, Optional<String> county) {
    public Jurisdiction {
        if (!country.equals("US") && !country.equals("CA")) {
            throw new IllegalArgumentException("a country is US or CA; got " + country);
        }
        if (county.isPresent() && region.isEmpty()) {
            throw new IllegalArgumentException("a county lies in a region: " + county.get());
        }
    }

    /// Reads `US`, `US-PA`, `Pennsylvania` or `US-NY / Suffolk`.
    ///
    /// `CA` alone is the postal code of California; the country is written `Canada`.
    public static Reading<Jurisdiction> read(String text) {
        String wanted = text.strip();
        if (wanted.equalsIgnoreCase("US") || wanted.equalsIgnoreCase("United States")) {
            return Reading.of(new Jurisdiction("US", Optional.empty(), Optional.empty()));
        }
        if (wanted.equalsIgnoreCase("Canada")) {
            return Reading.of(new Jurisdiction("CA", Optional.empty(), Optional.empty()));
        }
        return Destination.read(wanted)
                .map(place -> new Jurisdiction(
                        place.region().code().substring(0, 2), Optional.of(place.region()), place.county()));
    }

    /// Whether its law holds at a place.
    public boolean covers(Destination place) {
        return place.region().code().startsWith(country)
                && region.map(place.region()::equals).orElse(true)
                && county.map(name ->
                                place.county().filter(name::equalsIgnoreCase).isPresent())
                        .orElse(true);
    }

    /// Whether it may hold at a place of which the county is not given.
    public boolean mayCover(Destination place) {
        return county.isPresent()
                && place.county().isEmpty()
                && region.map(place.region()::equals).orElse(false);
    }

    /// The form that [#read] reads back.
    @Override
    public String toString() {
        if (region.isEmpty()) {
            return country.equals("CA") ? "Canada" : country;
        }
        return region.get().code().toUpperCase(Locale.ROOT)
                + county.map(name -> " / " + name).orElse("");
    }
}
