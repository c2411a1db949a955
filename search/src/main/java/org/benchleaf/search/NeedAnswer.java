package org.benchleaf.search;

import java.util.List;
import java.util.Map;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.shared.plant.LifeForm;

/// The answer to a need.
///
/// @param revision the catalog's state that was searched; matches are read and judged afresh when answering
/// @param total plants that are not known to miss a fixed wish: all that can be ranked
/// @param meetAll of these, plants known to meet every wish
/// @param missNone of these, plants that miss no wish but of which something asked is not known
/// @param matches the best, best first
/// @param relaxations what to give up to get how many more, most first; pairs only when no single wish brings any
/// @param lifeForms how many of the plants that miss nothing are of each life form; a plant may be of
/// two
public record NeedAnswer(
        CatalogRevision revision,
        int total,
        int meetAll,
        int missNone,
        List<Match> matches,
        List<Relaxation> relaxations,
        Map<LifeForm, Integer> lifeForms) {
    public NeedAnswer {
        matches = List.copyOf(matches);
        relaxations = List.copyOf(relaxations);
        lifeForms = Map.copyOf(lifeForms);
    }
}
