package org.benchleaf.catalog;

import org.benchleaf.catalog.model.LedgerKind;

/// The append-only record of everything that came into a lot or left it. Safe for many threads.
public interface StockLedger {
    /// Adds one entry; when this returns [LedgerResult.Applied] the entry survives a power cut.
    ///
    /// A telephone without signal sends its entries later, and again when no answer came: the idempotency key, made
    /// where the entry was made, sees to it that an entry counts once however often it arrives.
    ///
    /// @param lot the grower's number for it
    /// @param kind what happened
    /// @param quantity plants, in the sense of the kind: see [LedgerKind]
    /// @param who the person
    /// @param why a remark or an order number; may be blank
    /// @param idempotencyKey unique to this entry, not blank
    LedgerResult record(String lot, LedgerKind kind, int quantity, String who, String why, String idempotencyKey);
}
