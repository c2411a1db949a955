package org.benchleaf.catalog.ledger;

import java.time.Instant;
import java.util.Optional;

/// Plants set aside.
///
/// @param key of the entry that set them aside
/// @param lot where they stand
/// @param quantity how many are still set aside, 1 or more
/// @param until the moment from which they are free again; empty for a hold that stays until it is released
/// @param who held them
/// @param why for whom
public record Hold(String key, String lot, int quantity, Optional<Instant> until, String who, String why) {
    /// Whether it still sets plants aside; judged at the moment asked about, so that no clock has to end it.
    public boolean isOpenAt(Instant moment) {
        return until.map(end -> end.isAfter(moment)).orElse(true);
    }
}
