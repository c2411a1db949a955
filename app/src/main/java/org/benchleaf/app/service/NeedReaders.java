package org.benchleaf.app.service;

import java.util.Optional;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.search.need.NeedReader;

/// Keeps the reader of needs, which knows the genera and species of the catalog, until the catalog changes.
public final class NeedReaders {
    private final Benchleaf benchleaf;
    private volatile Optional<Reading> kept = Optional.empty();

    public NeedReaders(Benchleaf benchleaf) {
        this.benchleaf = benchleaf;
    }

    /// A reader that knows that state of the catalog.
    private record Reading(CatalogRevision revision, NeedReader reader) {}

    /// Knows the catalog as it is now.
    public NeedReader reader() {
        CatalogRevision now = benchleaf.catalog().revision();
        Optional<Reading> known = kept.filter(reading -> reading.revision().equals(now));
        if (known.isEmpty()) {
            known = Optional.of(new Reading(now, benchleaf.needReader()));
            kept = known;
        }
        return known.get().reader();
    }
}
