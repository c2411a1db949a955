package org.benchleaf.catalog.walk;

import java.time.Instant;
import org.benchleaf.shared.Problem;

/// How a sighting stands with the catalog.
public sealed interface Standing {
    /// Written down, and in the stock ledger where it speaks of a lot.
    record Noted() implements Standing {}

    /// Kept, and the stock is as it was: somebody must look.
    ///
    /// @param problem `walk.plant.unknown`, `walk.plant.retired`, `walk.lot.missing`,
    ///     `walk.lot.unknown`, `walk.lot.other.plant`, `walk.count.held`, `walk.count.later`,
    ///     `walk.count.impossible`, `walk.seen.later` or `walk.future`
    record InConflict(Problem problem) implements Standing {}

    /// Somebody looked.
    ///
    /// @param was what stood in its way
    /// @param how what was decided
    record Settled(Problem was, Decision how, String who, Instant at) implements Standing {}

    /// What somebody decided.
    enum Decision {
        /// The stock is as it was seen.
        AS_SEEN,
        /// It was another lot.
        OTHER_LOT,
        /// The stock stays as it was; the sighting stays as a note.
        NOTE_ONLY
    }
}
