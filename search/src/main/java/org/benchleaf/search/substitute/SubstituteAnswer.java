package org.benchleaf.search.substitute;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.shared.name.TaxonName;
import org.benchleaf.shared.need.Need;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;

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

    /// What lists name instead, here or not, that which most publishers name first.
    public List<TaxonName> advised() {
        return need.wishes().stream()
                .map(WeighedWish::wish)
                .filter(Wish.NamedInstead.class::isInstance)
                .map(Wish.NamedInstead.class::cast)
                .flatMap(named -> named.publishers().entrySet().stream())
                .sorted(Map.Entry.<TaxonName, Integer>comparingByValue(Comparator.reverseOrder())
                        .thenComparing(one -> one.getKey().text()))
                .map(Map.Entry::getKey)
                .distinct()
                .toList();
    }

    /// Those of one group, best first.
    public List<Substitute> of(Kin kin) {
        return all.stream().filter(one -> one.kin() == kin).toList();
    }
}
