package org.benchleaf.catalog.lists;

import java.util.Optional;
import org.benchleaf.shared.measure.HardinessZone;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.rule.Destination;
import org.benchleaf.shared.site.Exposure;
import org.benchleaf.shared.site.Moisture;

/// Where and when the plants of a list are planted, as far as it is known.
///
/// @param zone hardiness zone of the site
/// @param light of the site
/// @param soil how wet
/// @param shipTo where they are delivered
/// @param by the week by which they must be ready
public record ListSite(
        Optional<HardinessZone> zone,
        Optional<Exposure> light,
        Optional<Moisture> soil,
        Optional<Destination> shipTo,
        Optional<YearWeek> by) {
    public static final ListSite UNKNOWN =
            new ListSite(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
}
