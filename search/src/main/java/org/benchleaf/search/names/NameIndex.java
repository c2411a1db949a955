package org.benchleaf.search.names;

import java.util.List;
import org.benchleaf.search.index.PlantIndex;

/// Looks plants up by name. Safe for many threads.
public final class NameIndex {
    private final PlantIndex index;

    public NameIndex(PlantIndex index) {
        this.index = index;
    }

    /// The plants whose names match what was typed, the surest first.
    ///
    /// @param typed a name or the beginning of one, in any case, with or without marks
    /// @param limit how many at most, 1 to 1000
    public List<NameHit> find(String typed, int limit) {
        throw new UnsupportedOperationException("not built yet: " + index + typed + limit);
    }
}
