package org.benchleaf.render.page;

import java.util.List;

/// What was seen on walks: first what somebody must look at.
///
/// @param shop whose
/// @param conflicts with their ways out
/// @param seen of the last days, the newest first
/// @param formToken proves that a form is ours
public record SightingsPage(Shop shop, List<SeenLine> conflicts, List<SeenLine> seen, String formToken) {
    public SightingsPage {
        conflicts = List.copyOf(conflicts);
        seen = List.copyOf(seen);
    }
}
