package org.benchleaf.catalog.walk;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.benchleaf.shared.measure.YearWeek;

/// What a week's bulletin tells. What a plant is called, costs and how many there are stands in the
/// catalog and is read when the bulletin is shown, so that a page never promises what is gone.
///
/// @param week the week it is for
/// @param version counts saves; 0 for one that was never saved
/// @param greeting a line or two above all; may be empty
/// @param lines what it tells of, the lead first
/// @param who made it
/// @param publishedAt when everybody could see it first; empty while only the staff can
public record Bulletin(
        YearWeek week, int version, String greeting, List<Line> lines, String who, Optional<Instant> publishedAt) {
    public Bulletin {
        lines = List.copyOf(lines);
    }

    public boolean isPublished() {
        return publishedAt.isPresent();
    }

    /// One plant of it.
    ///
    /// @param sighting the key of what was seen
    /// @param reason why it is worth buying now, one line; may be empty
    public record Line(String sighting, String reason) {}
}
