package org.benchleaf.catalog.walk;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.benchleaf.shared.Reading;

/// Crop walks of a catalog. Safe for many threads.
public interface CropWalks {
    /// Writes a sighting down; when this returns, it survives a power cut. What it says of a lot goes
    /// into the stock ledger in the same breath, or, in a conflict, not at all.
    ///
    /// @return the sighting as it stands, also when it came before; or `walk.key.reused` when another
    ///     one came under its key, or what [Sighting#checked] refuses
    Reading<NotedSighting> note(Sighting sighting);

    Optional<NotedSighting> sighting(String key);

    /// Settles a conflict; one that is settled already stays so.
    ///
    /// @param who decides
    /// @return how it stands now: in conflict still where the way out is none; or
    ///     `walk.sighting.unknown`
    Reading<NotedSighting> settle(String key, Settlement settlement, String who);

    /// Sightings that somebody must look at, the oldest first.
    List<NotedSighting> conflicts();

    /// The newest walks first.
    List<Walk> walks(int most);

    /// What was seen on a walk, in the order it came.
    List<NotedSighting> seenOn(String walk);

    /// What was seen from a moment on, by any walk, the newest first.
    List<NotedSighting> seenSince(Instant from, int most);
}
