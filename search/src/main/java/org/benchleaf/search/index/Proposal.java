package org.benchleaf.search.index;

import java.util.List;
import java.util.Map;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.plant.LifeForm;

/// What the index proposes for a need.
///
/// @param revision the catalog's state it knows
/// @param tally how many plants meet what
/// @param lifeForms of the plants that miss nothing, how many are of each life form
/// @param best the keys of the best plants, best first
public record Proposal(CatalogRevision revision, Tally tally, Map<LifeForm, Integer> lifeForms, List<PlantKey> best) {
    public Proposal {
        lifeForms = Map.copyOf(lifeForms);
        best = List.copyOf(best);
    }
}
