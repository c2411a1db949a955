package org.benchleaf.search.index;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.search.facet.Facet;
import org.benchleaf.search.facet.FacetCount;
import org.benchleaf.search.fit.Loosening;
import org.benchleaf.shared.code.PlantKey;

/// What the index proposes for a need.
///
/// @param revision the catalog's state it knows
/// @param tally how many plants meet what
/// @param facets what the answer can be narrowed by
/// @param loosenings by how much to loosen a wish, when few plants meet all
/// @param best the keys of the best plants, best first
public record Proposal(
        CatalogRevision revision,
        Tally tally,
        Map<Facet, List<FacetCount>> facets,
        List<Loosening> loosenings,
        List<PlantKey> best) {
    public Proposal {
        facets = Collections.unmodifiableMap(facets);
        loosenings = List.copyOf(loosenings);
        best = List.copyOf(best);
    }
}
