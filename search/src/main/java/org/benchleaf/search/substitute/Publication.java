package org.benchleaf.search.substitute;

import java.util.Optional;
import java.util.Set;
import org.benchleaf.shared.fact.Region;

/// A published list of what to plant instead of what.
///
/// @param publisher who stands behind it
/// @param homes the states or provinces whose gardens the publisher knows; empty for those of whole countries
/// @param title of the page or leaflet
/// @param year as the page gives it, or `n.d.`
/// @param address where it was read
public record Publication(String publisher, Set<Region> homes, String title, String year, String address) {
    public Publication {
        homes = Set.copyOf(homes);
    }

    boolean isOf(Optional<Region> place) {
        return place.filter(homes::contains).isPresent();
    }
}
