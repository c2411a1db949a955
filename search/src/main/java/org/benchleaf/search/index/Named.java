package org.benchleaf.search.index;

import java.util.List;
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
}
