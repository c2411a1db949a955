package org.benchleaf.render.page;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.benchleaf.shared.plant.LifeForm;

/// What can be had, on as many pages as it takes.
///
/// @param asOf when stock was looked up, in the shop's own time
/// @param groups in the order of print
/// @param shop who prints
public record AvailabilityList(LocalDateTime asOf, List<Group> groups, Shop shop) {
    public AvailabilityList {
        groups = List.copyOf(groups);
    }

    /// Plants listed under one heading.
    ///
    /// @param kind what they are; empty where that is not known
    /// @param plants in the order of print
    public record Group(Optional<LifeForm> kind, List<PlantItems> plants) {
        public Group {
            plants = List.copyOf(plants);
        }
    }
}
