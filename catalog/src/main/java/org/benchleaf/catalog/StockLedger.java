package org.benchleaf.catalog;

import java.util.List;
import java.util.Optional;
import org.benchleaf.catalog.ledger.Hold;
import org.benchleaf.catalog.ledger.LedgerEntry;
import org.benchleaf.catalog.ledger.LedgerLine;
import org.benchleaf.catalog.model.LotRecord;

/// The append-only record of everything that came into a lot or left it. Counts, holds and what is free are sums of
/// it. Safe for many threads: entries that arrive together are written together, and none returns before it is safe.
public interface StockLedger {
    /// Adds one entry; when this returns [LedgerResult.Applied] the entry survives a power cut.
    LedgerResult record(LedgerEntry entry);

    /// Adds entries that belong together, such as a hold that is spread over lots: all of them, or none
    /// when one is refused.
    ///
    /// @return what became of each; when one is refused, the others say what they would have left and are
    ///     not written
    List<LedgerResult> recordTogether(List<LedgerEntry> entries);

    /// A lot as of now; empty when it is not in the catalog.
    Optional<LotRecord> lot(String lot);

    /// What is set aside by the entry with this key; empty when nothing is left of it. One that has ended is among
    /// them: ask [Hold#isOpenAt].
    Optional<Hold> hold(String key);

    /// The holds of a lot that have not ended, the oldest first.
    List<Hold> holds(String lot);

    /// The newest entries of a lot, the oldest of them first.
    ///
    /// @param most how many
    List<LedgerLine> history(String lot, int most);
}
