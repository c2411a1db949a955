package org.benchleaf.search.substitute;

import java.util.Optional;
import org.benchleaf.shared.plant.Season;
import org.benchleaf.shared.plant.Use;

/// What the customer bought the original for, as far as it was said; what was not is taken from the original.
///
/// @param use such as a hedge
/// @param season what it is looked at for
public record Purpose(Optional<Use> use, Optional<Season> season) {
    public static final Purpose NOT_SAID = new Purpose(Optional.empty(), Optional.empty());

    public static Purpose of(Use use) {
        return new Purpose(Optional.of(use), Optional.empty());
    }

    public static Purpose of(Season season) {
        return new Purpose(Optional.empty(), Optional.of(season));
    }
}
