package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.catalog.LedgerResult;
import org.benchleaf.catalog.ledger.LedgerEntry;
import org.benchleaf.catalog.ledger.NewLot;
import org.benchleaf.catalog.ledger.StockEvent;
import org.benchleaf.catalog.model.LedgerKind;
import org.benchleaf.shared.Problem;

/// Judges the entries of one transaction, each upon what those before it left. It holds what the ledger and the lots
/// say of them; whoever makes it has the only right to write, so nothing of that changes meanwhile.
final class LedgerBook {
    /// A telephone's clock may be fast by so much.
    private static final Duration FAST_CLOCK = Duration.ofMinutes(10);

    private final Instant now;
    private final LotShelf lots;
    private final Map<String, LedgerRow.Said> said;
    private final List<LedgerRow> rows = new ArrayList<>();

    private LedgerBook(Instant now, LotShelf lots, Map<String, LedgerRow.Said> said) {
        this.now = now;
        this.lots = lots;
        this.said = said;
    }

    static LedgerBook open(Session session, List<LedgerEntry> entries, Instant now) throws SQLException {
        Map<String, LedgerRow.Said> earlier = LedgerReader.said(
                session, entries.stream().map(LedgerEntry::key).toList());
        return new LedgerBook(now, LotShelf.read(session, entries, now), new HashMap<>(earlier));
    }

    /// The rows that the accepted entries became, in their order.
    List<LedgerRow> rows() {
        return rows;
    }

    LotShelf lots() {
        return lots;
    }

    LedgerResult post(LedgerEntry entry) {
        LedgerRow.Said wanted = LedgerRow.said(entry);
        LedgerRow.Said earlier = said.get(entry.key());
        if (earlier != null) {
            return earlier.equals(wanted)
                    ? new LedgerResult.AlreadyApplied(
                            lots.find(entry.lot()).map(LotState::balance).orElse(LotState.GONE))
                    : refused("ledger.key.reused", entry.key())
                            .with("lot", entry.lot())
                            .with("earlier", earlier.lot())
                            .result();
        }
        Optional<Refusal> refusal = judge(entry);
        if (refusal.isPresent()) {
            return refusal.get().result();
        }
        said.put(entry.key(), wanted);
        return new LedgerResult.Applied(lots.find(entry.lot()).orElseThrow().balance());
    }

    private Optional<Refusal> judge(LedgerEntry entry) {
        StockEvent event = entry.event();
        if (!event.kind().accepts(event.stated()) || event instanceof StockEvent.Moved moved && moved.stated() == 0) {
            return Optional.of(refused("ledger.quantity", Integer.toString(event.stated()))
                    .with("kind", event.kind().term()));
        }
        if (entry.happenedAt().map(at -> at.isAfter(now.plus(FAST_CLOCK))).orElse(false)) {
            return Optional.of(refused("ledger.future", entry.happenedAt().get().toString()));
        }
        Optional<LotState> lot = lots.find(entry.lot());
        if (event instanceof StockEvent.Received(int stated, Optional<NewLot> begun) && begun.isPresent()) {
            return lot.isPresent() ? Optional.of(refused("ledger.lot.exists", entry.lot())) : begin(entry, begun.get());
        }
        return lot.isEmpty() ? Optional.of(refused("ledger.lot.unknown", entry.lot())) : judge(entry, event, lot.get());
    }

    private Optional<Refusal> begin(LedgerEntry entry, NewLot begun) {
        Optional<LotState> lot = lots.begin(entry.lot(), begun);
        return lot.isEmpty()
                ? Optional.of(refused("ledger.item.unknown", begun.item().toString()))
                : added(entry, lot.get());
    }

    private Optional<Refusal> judge(LedgerEntry entry, StockEvent event, LotState lot) {
        return switch (event) {
            case StockEvent.Received received -> added(entry, lot);
            case StockEvent.Counted(int found) -> counted(entry, lot, found);
            case StockEvent.Held held -> held(entry, lot, held);
            case StockEvent.Released(int stated, String hold) -> {
                Optional<Refusal> refusal = taken(hold, lot, stated);
                if (refusal.isEmpty()) {
                    note(entry, lot, 0, -stated);
                }
                yield refusal;
            }
            case StockEvent.Shipped(int stated, Optional<String> hold) ->
                hold.isPresent() ? shippedFrom(hold.get(), entry, lot, stated) : shipped(entry, lot, stated);
            case StockEvent.Lost(int stated) -> {
                if (stated > lot.count()) {
                    yield Optional.of(tooFew(entry, lot));
                }
                note(entry, lot, -stated, 0);
                yield Optional.empty();
            }
            case StockEvent.Moved(int stated, String to) -> moved(entry, lot, stated, to);
            case StockEvent.Placed(String place) -> {
                lot.place(place);
                note(entry, lot, 0, 0);
                yield Optional.empty();
            }
            case StockEvent.Ready(var week) -> {
                lot.ready(week);
                note(entry, lot, 0, 0);
                yield Optional.empty();
            }
            case StockEvent.Seen seen -> seen(entry, lot, seen);
        };
    }

    private Optional<Refusal> added(LedgerEntry entry, LotState lot) {
        int more = entry.event().stated();
        if ((long) lot.count() + more > LedgerKind.MOST) {
            return Optional.of(refused("ledger.too.many", Integer.toString(more))
                    .with("lot", lot.lot())
                    .with("most", Integer.toString(LedgerKind.MOST)));
        }
        note(entry, lot, more, 0);
        return Optional.empty();
    }

    /// What is counted is so, even where more were held: those are gone, and nothing is free.
    private Optional<Refusal> counted(LedgerEntry entry, LotState lot, int found) {
        if (found != lot.count() && entry.why().isBlank()) {
            return Optional.of(refused("ledger.reason", Integer.toString(found))
                    .with("lot", lot.lot())
                    .with("count", Integer.toString(lot.count())));
        }
        note(entry, lot, found - lot.count(), 0);
        return Optional.empty();
    }

    private Optional<Refusal> held(LedgerEntry entry, LotState lot, StockEvent.Held held) {
        if (held.until().map(end -> !end.isAfter(now)).orElse(false)) {
            return Optional.of(refused("ledger.hold.past", held.until().get().toString()));
        }
        if (held.stated() > lot.balance().free()) {
            return Optional.of(notFree(entry, lot));
        }
        lot.hold(entry.key(), held.stated(), held.until().map(LedgerRow::moment));
        note(entry, lot, 0, held.stated());
        return Optional.empty();
    }

    private Optional<Refusal> shipped(LedgerEntry entry, LotState lot, int stated) {
        if (stated > lot.balance().free()) {
            return Optional.of(notFree(entry, lot));
        }
        note(entry, lot, -stated, 0);
        return Optional.empty();
    }

    private Optional<Refusal> shippedFrom(String hold, LedgerEntry entry, LotState lot, int stated) {
        if (lot.hasEnded(hold)) {
            return Optional.of(refused("ledger.hold.ended", hold).with("lot", lot.lot()));
        }
        if (stated > lot.count()) {
            return Optional.of(tooFew(entry, lot));
        }
        Optional<Refusal> refusal = taken(hold, lot, stated);
        if (refusal.isEmpty()) {
            note(entry, lot, -stated, -stated);
        }
        return refusal;
    }

    /// Takes from a hold; one that has ended may still be given back, for a telephone may have done so in time.
    private Optional<Refusal> taken(String hold, LotState lot, int stated) {
        int left = lot.leftOf(hold);
        if (left == 0) {
            return Optional.of(
                    lots.holdIsElsewhere(hold)
                            ? refused("ledger.hold.other.lot", hold).with("lot", lot.lot())
                            : refused("ledger.hold.unknown", hold));
        }
        if (stated > left) {
            return Optional.of(refused("ledger.hold.less", Integer.toString(stated))
                    .with("hold", hold)
                    .with("left", Integer.toString(left)));
        }
        lot.takeFrom(hold, stated);
        return Optional.empty();
    }

    private Optional<Refusal> moved(LedgerEntry entry, LotState lot, int stated, String to) {
        Optional<LotState> target = lots.find(to);
        if (to.equals(lot.lot())) {
            return Optional.of(refused("ledger.move.same", to));
        }
        if (target.isEmpty()) {
            return Optional.of(refused("ledger.lot.unknown", to));
        }
        if (target.get().plant() != lot.plant()) {
            return Optional.of(refused("ledger.move.other.plant", to).with("lot", lot.lot()));
        }
        if (stated > lot.balance().free()) {
            return Optional.of(notFree(entry, lot));
        }
        if ((long) target.get().count() + stated > LedgerKind.MOST) {
            return Optional.of(refused("ledger.too.many", Integer.toString(stated))
                    .with("lot", to)
                    .with("most", Integer.toString(LedgerKind.MOST)));
        }
        note(entry, lot, -stated, 0);
        target.get().add(stated);
        rows.add(LedgerRow.arrival(entry, to, now));
        return Optional.empty();
    }

    private Optional<Refusal> seen(LedgerEntry entry, LotState lot, StockEvent.Seen seen) {
        if (seen.conditions().isEmpty()) {
            return Optional.of(refused("ledger.seen.nothing", lot.lot()));
        }
        lot.seen(seen);
        note(entry, lot, 0, 0);
        return Optional.empty();
    }

    private void note(LedgerEntry entry, LotState lot, int change, int held) {
        lot.add(change);
        rows.add(LedgerRow.of(entry, change, held, now));
    }

    private static Refusal tooFew(LedgerEntry entry, LotState lot) {
        return refused("ledger.too.few", Integer.toString(entry.event().stated()))
                .with("lot", lot.lot())
                .with("kind", entry.event().kind().term())
                .with("count", Integer.toString(lot.count()));
    }

    /// More than there are, or more than nobody else was promised.
    private static Refusal notFree(LedgerEntry entry, LotState lot) {
        return entry.event().stated() > lot.count()
                ? tooFew(entry, lot)
                : new Refusal(tooFew(entry, lot).problem().details(), "ledger.held")
                        .with("held", Integer.toString(lot.balance().held()))
                        .with("free", Integer.toString(lot.balance().free()));
    }

    private static Refusal refused(String key, String read) {
        return new Refusal(Problem.of(key, read));
    }

    /// Why an entry is not written.
    private record Refusal(Problem problem) {
        Refusal(Map<String, String> details, String key) {
            this(new Problem(key, details));
        }

        Refusal with(String name, String value) {
            return new Refusal(problem.with(name, value));
        }

        LedgerResult result() {
            return new LedgerResult.Refused(problem);
        }
    }
}
