package org.benchleaf.search.substitute;

import java.util.List;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.shared.need.Need;

/// Substitutes for a plant.
///
/// @param revision the catalog's state that was searched
/// @param originalStock what there is of the original
/// @param role the work it does
/// @param need what was asked of the judge
/// @param best the best of all groups, best first
/// @param all all that were found, in groups' order and best first within a group; each group at most as long
///     as asked
/// @param passedOver plants that would have come among the best but are unwelcome as the original is
public record SubstituteAnswer(
        CatalogRevision revision,
        PlantStock originalStock,
        Role role,
        Need need,
        List<Substitute> best,
        List<Substitute> all,
        List<PlantRecord> passedOver) {
    public SubstituteAnswer {
        best = List.copyOf(best);
        all = List.copyOf(all);
        passedOver = List.copyOf(passedOver);
    }

    /// Those of one group, best first.
    public List<Substitute> of(Kin kin) {
        return all.stream().filter(one -> one.kin() == kin).toList();
    }
}
