package org.benchleaf.search.substitute;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.shared.plant.Season;
import org.benchleaf.shared.plant.Use;

/// The work that a plant does in a garden.
///
/// @param use the use that was said; none when it was not
/// @param uses what it is put to besides
/// @param looks what it is looked at for, the strongest first
/// @param unwelcome whether it is named by sale rules somewhere, or spreads where it is not at home: what takes
///     its place must not do the same
public record Role(Optional<Use> use, Set<Use> uses, List<Look> looks, boolean unwelcome) {
    public Role {
        uses = Set.copyOf(uses);
        looks = List.copyOf(looks);
    }

    /// What it is looked at for, the strongest first.
    public List<Season> seasons() {
        return looks.stream().map(Look::season).toList();
    }

    /// A season and how much of the plant's worth it is.
    ///
    /// @param share above 0, at most 1
    public record Look(Season season, double share) {}

    /// Whether it covers the ground, said or usual.
    boolean coversGround() {
        return use.map(one -> one == Use.GROUNDCOVER).orElse(uses.contains(Use.GROUNDCOVER));
    }
}
