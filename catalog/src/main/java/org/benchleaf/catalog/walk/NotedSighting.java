package org.benchleaf.catalog.walk;

import java.time.Instant;

/// A sighting as it stands in the catalog.
///
/// @param sighting what was seen
/// @param standing what became of it
/// @param receivedAt when it came; later than it was seen where there was no signal
public record NotedSighting(Sighting sighting, Standing standing, Instant receivedAt) {
    public boolean isInConflict() {
        return standing instanceof Standing.InConflict;
    }
}
