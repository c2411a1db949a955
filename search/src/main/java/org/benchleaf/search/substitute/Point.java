package org.benchleaf.search.substitute;

import java.util.Optional;
import org.benchleaf.catalog.model.Fact;

/// How two plants stand to each other in one aspect.
///
/// @param aspect what is compared
/// @param relation how the substitute stands to the original
/// @param better whether most customers would call it better
/// @param original the original's fact
/// @param substitute the substitute's fact
public record Point(
        Aspect aspect, Relation relation, boolean better, Optional<Fact<?>> original, Optional<Fact<?>> substitute) {
    /// How a substitute stands to the original.
    public enum Relation {
        /// Alike, as far as anybody sees.
        SAME,
        /// More of it: taller, longer in bloom, hardier.
        MORE,
        /// Less of it.
        LESS,
        /// Otherwise.
        OTHER,
        /// The catalog does not know it of the substitute.
        UNKNOWN
    }
}
