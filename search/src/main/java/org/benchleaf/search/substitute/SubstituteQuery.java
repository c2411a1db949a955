package org.benchleaf.search.substitute;

import java.util.List;
import java.util.Optional;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.rule.Shipment;

/// One question for substitutes.
///
/// @param original what is wanted and cannot be had; it need not be in the catalog
/// @param purpose what it was wanted for
/// @param demand how many, in which size, by when
/// @param shipment where to; without it nothing is left out for sale rules
/// @param wishes what else is asked, such as the zone of the site; these come before what is taken from the
///     original
/// @param now the week of asking
/// @param limit how many at most in each group, 1 to 50
public record SubstituteQuery(
        PlantRecord original,
        Purpose purpose,
        Demand demand,
        Optional<Shipment> shipment,
        List<WeighedWish> wishes,
        YearWeek now,
        int limit) {
    public static final int MOST = 50;

    public SubstituteQuery {
        wishes = List.copyOf(wishes);
        if (limit < 1 || limit > MOST) {
            throw new IllegalArgumentException("limit must be 1 to " + MOST + "; got " + limit);
        }
    }

    /// The first three of each group, for no purpose said.
    public static SubstituteQuery of(PlantRecord original, Demand demand, YearWeek now) {
        return new SubstituteQuery(original, Purpose.NOT_SAID, demand, Optional.empty(), List.of(), now, 3);
    }

    /// The week by which plants must be ready.
    public YearWeek by() {
        return demand.by().orElse(now);
    }
}
