package org.benchleaf.search;

import org.benchleaf.catalog.CatalogView;
import org.benchleaf.search.index.PlantIndex;

/// Answers needs.
public final class NeedSearch {
    private final CatalogView catalog;
    private final PlantIndex index;

    public NeedSearch(CatalogView catalog, PlantIndex index) {
        this.catalog = catalog;
        this.index = index;
    }

    /// Ranks every plant of the index, reads the best from the catalog and judges them afresh.
    public NeedAnswer answer(NeedQuery query) {
        throw new UnsupportedOperationException("not built yet: " + catalog + index + query);
    }
}
