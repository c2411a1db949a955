package org.benchleaf.catalog.ledger;

import java.time.Instant;
import java.util.Optional;
import org.benchleaf.catalog.model.LedgerKind;

/// One entry as it stands in the ledger for ever.
///
/// @param number counts up over all lots
/// @param lot the grower's number for the lot
/// @param kind what happened
/// @param change what it added to the count; negative when it took away
/// @param stated the number as it was given
/// @param count how many the lot had after it
/// @param hold the key of the hold it made, used up or gave back
/// @param until when the hold it made ends
/// @param otherLot where plants came from or went to
/// @param detail the new place, ready week or condition in words; else empty
/// @param happenedAt when it happened
/// @param enteredAt when it was written; later where it came from a telephone without signal
/// @param who the person
/// @param why the reason, remark or order
/// @param key the entry's own; empty for the other half of a move
public record LedgerLine(
        long number,
        String lot,
        LedgerKind kind,
        int change,
        int stated,
        int count,
        Optional<String> hold,
        Optional<Instant> until,
        Optional<String> otherLot,
        String detail,
        Instant happenedAt,
        Instant enteredAt,
        String who,
        String why,
        Optional<String> key) {}
