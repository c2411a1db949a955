package org.benchleaf.catalog;

import java.time.Instant;

/// An import that was taken back.
///
/// @param file the spreadsheet it had loaded
/// @param appliedAt when it had been loaded
/// @param revision the state without it; a later one, for states are never counted back
/// @param plantsTakenOut plants that it had brought
/// @param plantsRestored plants that have their earlier names and facts again
/// @param lotsTakenOut lots that it had brought
/// @param lotsRestored lots that have their earlier count and condition again
public record UndoneImport(
        String file,
        Instant appliedAt,
        CatalogRevision revision,
        int plantsTakenOut,
        int plantsRestored,
        int lotsTakenOut,
        int lotsRestored) {}
