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
/// @param address where it was read; empty for a shop's own word
public record Publication(String publisher, Set<Region> homes, String title, String year, String address) {
    public Publication {
        homes = Set.copyOf(homes);
    }

    /// A shop's own word, which is published nowhere.
    public static Publication own(String shop) {
        return new Publication(shop, Set.of(), "", "", "");
    }

    boolean isOwn() {
        return address.isEmpty();
    }

    boolean isOf(Optional<Region> place) {
        return place.filter(homes::contains).isPresent();
    }
}
