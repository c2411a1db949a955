package org.benchleaf.search;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.search.facet.Facet;
import org.benchleaf.search.facet.FacetCount;
import org.benchleaf.search.fit.Loosening;

/// The answer to a need.
///
/// @param revision the catalog's state that was searched; matches are read and judged afresh when answering
/// @param total plants that are not known to miss a fixed wish: all that can be ranked
/// @param meetAll of these, plants known to meet every wish
/// @param missNone of these, plants that miss no wish but of which something asked is not known
/// @param matches the best, best first
/// @param relaxations what to give up to get how many more, most first; pairs only when no single wish brings
/// any
/// @param loosenings by how much to loosen one wish to get how many more, when fewer than twenty plants meet
/// all
/// @param facets what the answer can be narrowed by: for each value, how many plants miss nothing else that is
///     asked and have it
public record NeedAnswer(
        CatalogRevision revision,
        int total,
        int meetAll,
        int missNone,
        List<Match> matches,
        List<Relaxation> relaxations,
        List<Loosening> loosenings,
        Map<Facet, List<FacetCount>> facets) {
    public NeedAnswer {
        matches = List.copyOf(matches);
        relaxations = List.copyOf(relaxations);
        loosenings = List.copyOf(loosenings);
        facets = Collections.unmodifiableMap(facets);
    }

    /// To words of which none was read as a wish: every plant would meet that, and mislead.
    public static NeedAnswer toNothing(CatalogRevision revision) {
        return new NeedAnswer(revision, 0, 0, 0, List.of(), List.of(), List.of(), Map.of());
    }
}
