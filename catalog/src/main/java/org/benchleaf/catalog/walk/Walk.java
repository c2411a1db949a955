package org.benchleaf.catalog.walk;

import java.time.Instant;

/// One walk through the rows.
///
/// @param key made on the telephone when the walk began
/// @param who the person
/// @param startedAt when
public record Walk(String key, String who, Instant startedAt) {
    public Walk {
        if (!Sighting.isKey(key) || who.isBlank()) {
            throw new IllegalArgumentException("a walk needs a key and a person; got " + key);
        }
    }
}
