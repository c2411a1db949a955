package org.benchleaf.search.substitute;

import java.util.List;
import java.util.Optional;
import org.benchleaf.search.Match;
import org.benchleaf.shared.plant.Caution;
import org.benchleaf.shared.rule.SaleVerdict;

/// A plant that can take the place of another.
///
/// @param match the plant, its stock now, and how it meets the need that the original's role is
/// @param kin how near by descent
/// @param comparison beside the original
/// @param offer what can be had of it; empty when stock was not asked for and there is none
/// @param hazards what it can do harm that the original is not known to do
/// @param troubles pests and diseases that both are hosts of
/// @param namedBy publishers of lists that name it instead of the original; those of the place it goes to first
/// @param sale what the sale rules say of shipping it there; empty when no place is known or no list is loaded
public record Substitute(
        Match match,
        Kin kin,
        Comparison comparison,
        Optional<Offer> offer,
        List<Caution> hazards,
        List<Trouble> troubles,
        List<String> namedBy,
        Optional<SaleVerdict> sale) {
    public Substitute {
        hazards = List.copyOf(hazards);
        troubles = List.copyOf(troubles);
        namedBy = List.copyOf(namedBy);
    }
}
