package org.benchleaf.search.index;

import java.nio.file.Path;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.CatalogView;

/// The index of a catalog in a folder. Safe for many threads.
public final class PlantIndex implements AutoCloseable {
    private PlantIndex() {}

    /// Opens the index, builds it when there is none or it is damaged or of another format, and catches up with the
    /// catalog.
    public static PlantIndex open(Path folder, CatalogView catalog) {
        throw new UnsupportedOperationException("not built yet: " + folder + catalog);
    }

    /// Takes over what changed in the catalog since; call it after each change and from time to time.
    ///
    /// @return the revision it then stands at
    public CatalogRevision catchUp() {
        throw new UnsupportedOperationException("not built yet");
    }

    /// Builds the index anew beside the old one, which keeps answering, and then takes its place.
    public CatalogRevision rebuild() {
        throw new UnsupportedOperationException("not built yet");
    }

    /// The catalog's state that is answered from.
    public CatalogRevision revision() {
        throw new UnsupportedOperationException("not built yet");
    }

    @Override
    public void close() {}
}
