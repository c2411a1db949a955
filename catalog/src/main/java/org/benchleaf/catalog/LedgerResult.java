package org.benchleaf.catalog;

import org.benchleaf.shared.Problem;

/// What became of an entry offered to the stock ledger.
public sealed interface LedgerResult {
    /// It is written, and safe from a power cut.
    ///
    /// @param count how many the lot holds after it, 0 or more
    record Applied(int count) implements LedgerResult {}

    /// The same entry was written before, under the same idempotency key; nothing changed now.
    ///
    /// @param count how many the lot holds now, 0 or more
    record AlreadyApplied(int count) implements LedgerResult {}

    /// It is not written.
    ///
    /// @param problem `ledger.lot.unknown`, `ledger.quantity`, `ledger.too.few` or `ledger.key.reused`
    record Refused(Problem problem) implements LedgerResult {}
}
