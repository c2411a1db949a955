package org.benchleaf.search.fit;

import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;

/// A plant to be judged, with what does not depend on what is asked.
///
/// @param merit what it is worth whatever is asked, 0 to [Merit#MOST]
/// @param order its name as sorted in lists
public record Candidate(PlantRecord plant, PlantStock stock, int merit, String order) {
    public Candidate(PlantRecord plant, PlantStock stock) {
        this(plant, stock, Merit.of(plant), plant.name().sortKey());
    }
}
