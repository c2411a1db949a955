package org.benchleaf.catalog.walk;

import java.util.List;
import java.util.Optional;
import org.benchleaf.shared.Reading;
import org.benchleaf.shared.measure.YearWeek;

/// The bulletins of a catalog. Safe for many threads.
public interface Bulletins {
    Optional<Bulletin> find(YearWeek week);

    /// Weeks of which everybody can see the bulletin, the newest first.
    List<YearWeek> published(int most);

    /// Writes a bulletin as a whole; when this returns, it survives a power cut.
    ///
    /// @return as saved, one version on; or `bulletin.stale` when somebody saved it meanwhile,
    ///     `bulletin.sighting.unknown`
    Reading<Bulletin> save(Bulletin bulletin);
}
