package org.benchleaf.catalog.store;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.catalog.ledger.LedgerEntry;
import org.benchleaf.catalog.ledger.NewLot;
import org.benchleaf.catalog.ledger.StockEvent;
import org.benchleaf.catalog.model.LedgerKind;
import org.benchleaf.shared.Term;
import org.benchleaf.shared.measure.YearWeek;

/// An entry as a row of the ledger.
///
/// @param said what was said, by which a repeated key is told from one used twice
/// @param change what it adds to the lot's count
/// @param held what it adds to its hold
/// @param happenedAt when it happened
/// @param key empty only for the other half of a move
record LedgerRow(Said said, int change, int held, Instant happenedAt, String who, String why, Optional<String> key) {
    /// What an entry says, whoever says it and whatever came of it.
    ///
    /// @param hold the key of the hold it makes, uses up or gives back
    /// @param until when the hold it makes ends
    record Said(
            String lot,
            LedgerKind kind,
            int stated,
            Optional<String> hold,
            Optional<String> until,
            Optional<String> otherLot,
            String detail) {}

    /// A count found by an import, or put back by its undo.
    static LedgerRow counted(String lot, int change, int found, Instant now, String who, String why, String key) {
        Said said = new Said(lot, LedgerKind.COUNTED, found, Optional.empty(), Optional.empty(), Optional.empty(), "");
        return new LedgerRow(said, change, 0, now, who, why, Optional.of(key));
    }

    /// The row of an entry that adds so many to the count and so many to its hold.
    static LedgerRow of(LedgerEntry entry, int change, int held, Instant now) {
        return new LedgerRow(
                said(entry),
                change,
                held,
                entry.happenedAt().orElse(now),
                entry.who(),
                entry.why(),
                Optional.of(entry.key()));
    }

    /// The row that a move leaves at the lot it went to.
    static LedgerRow arrival(LedgerEntry entry, String to, Instant now) {
        Said said = new Said(
                to,
                LedgerKind.MOVED,
                entry.event().stated(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(entry.lot()),
                "");
        return new LedgerRow(
                said,
                entry.event().stated(),
                0,
                entry.happenedAt().orElse(now),
                entry.who(),
                entry.why(),
                Optional.empty());
    }

    static Said said(LedgerEntry entry) {
        StockEvent event = entry.event();
        Optional<String> hold = switch (event) {
            case StockEvent.Held held -> Optional.of(entry.key());
            case StockEvent.Released released -> Optional.of(released.hold());
            case StockEvent.Shipped shipped -> shipped.hold();
            default -> Optional.empty();
        };
        Optional<String> until =
                event instanceof StockEvent.Held held ? held.until().map(LedgerRow::moment) : Optional.empty();
        Optional<String> other = event instanceof StockEvent.Moved moved ? Optional.of(moved.to()) : Optional.empty();
        return new Said(entry.lot(), event.kind(), event.stated(), hold, until, other, detail(event));
    }

    private static String detail(StockEvent event) {
        return switch (event) {
            case StockEvent.Placed placed -> placed.place();
            case StockEvent.Ready ready -> ready.week().map(YearWeek::toString).orElse("");
            case StockEvent.Seen seen -> seen.day() + " " + Term.write(seen.conditions());
            case StockEvent.Received received ->
                received.newLot().map(LedgerRow::begun).orElse("");
            default -> "";
        };
    }

    private static String begun(NewLot lot) {
        return Stream.of(
                        lot.item().toString(),
                        lot.place(),
                        lot.ready().map(YearWeek::toString).orElse(""))
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining("; "));
    }

    /// Whole seconds, so that texts sort as moments do.
    static String moment(Instant moment) {
        return moment.truncatedTo(ChronoUnit.SECONDS).toString();
    }
}
