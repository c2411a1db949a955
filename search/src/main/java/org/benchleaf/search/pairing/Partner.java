package org.benchleaf.search.pairing;

import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;

/// A plant whose pollen serves another, or that is served by it.
///
/// @param plant the partner
/// @param stock what is for sale of it
/// @param how why it is thought to be one
/// @param bloom whether they bloom at the same time
public record Partner(PlantRecord plant, PlantStock stock, How how, Bloom bloom) {
    /// Why a plant is thought to be a partner, the surest first.
    public enum How {
        /// One of the two names the other.
        NAMED,
        /// Both are of one pollination group.
        SAME_GROUP,
        /// Both are of one species, and nothing says that they do not suit.
        SAME_SPECIES
    }

    /// Whether two plants bloom at the same time.
    public enum Bloom {
        TOGETHER,
        /// Of one or both nobody says when.
        NOT_KNOWN,
        /// Somebody names them as partners all the same.
        APART
    }
}
