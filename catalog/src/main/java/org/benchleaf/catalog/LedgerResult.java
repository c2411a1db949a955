package org.benchleaf.catalog;

import org.benchleaf.catalog.ledger.Balance;
import org.benchleaf.shared.Problem;

/// What became of an entry offered to the stock ledger.
public sealed interface LedgerResult {
    /// It is written, and safe from a power cut.
    ///
    /// @param lot what the lot holds after it
    record Applied(Balance lot) implements LedgerResult {}

    /// The same entry was written before, under the same key; nothing changed now.
    ///
    /// @param lot what the lot holds now
    record AlreadyApplied(Balance lot) implements LedgerResult {}

    /// It is not written.
    ///
    /// @param problem `ledger.lot.unknown`, `ledger.quantity`, `ledger.too.few`, `ledger.held`, `ledger.too.many`,
    ///     `ledger.reason`, `ledger.key.reused`, `ledger.hold.unknown`, `ledger.hold.other.lot`,
    ///     `ledger.hold.ended`, `ledger.hold.less`, `ledger.hold.past`, `ledger.move.same`,
    ///     `ledger.move.other.plant`, `ledger.lot.exists`, `ledger.item.unknown`, `ledger.seen.nothing` or
    ///     `ledger.future`
    record Refused(Problem problem) implements LedgerResult {}
}
