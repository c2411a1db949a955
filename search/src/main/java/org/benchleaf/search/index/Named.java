package org.benchleaf.search.index;

import java.util.List;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.shared.code.PlantKey;

/// A plant with its names, as the index holds them.
///
/// @param plant its key
/// @param order its name as sorted in lists
/// @param names all its names
public record Named(PlantKey plant, String order, List<WrittenName> names) {
    public Named {
        names = List.copyOf(names);
    }

    /// The names by which a plant is found, as the index would hold them.
    public static Named of(PlantRecord plant) {
        return new Named(plant.key(), plant.name().sortKey(), List.copyOf(PlantDocument.names(plant)));
    }
}
