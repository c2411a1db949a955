package org.benchleaf.catalog.ledger;

import java.time.Instant;
import java.util.Optional;

/// One entry offered to the ledger.
///
/// A telephone without signal sends its entries later, and again when no answer came: the key, made where the entry
/// was made, sees to it that an entry counts once however often it arrives.
///
/// @param lot the grower's number for the lot
/// @param event what happened
/// @param who the person; not blank
/// @param why a reason, a remark or an order number; may be blank but for counts that differ
/// @param key unique to this entry, not blank; a hold is called by it later
/// @param happenedAt when it happened, where that is not the moment of writing; in the past
public record LedgerEntry(
        String lot, StockEvent event, String who, String why, String key, Optional<Instant> happenedAt) {
    public LedgerEntry {
        if (who.isBlank() || key.isBlank()) {
            throw new IllegalArgumentException("a ledger entry needs a person and a key; lot " + lot);
        }
    }

    /// An entry of something that happens now.
    public static LedgerEntry of(String lot, StockEvent event, String who, String why, String key) {
        return new LedgerEntry(lot, event, who, why, key, Optional.empty());
    }
}
