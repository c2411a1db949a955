package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.catalog.LedgerResult;
import org.benchleaf.catalog.ledger.LedgerEntry;
import org.benchleaf.catalog.ledger.LedgerLine;
import org.benchleaf.catalog.ledger.StockEvent;
import org.benchleaf.catalog.model.LedgerKind;
import org.benchleaf.catalog.model.LotRecord;
import org.benchleaf.catalog.walk.Sighting;
import org.benchleaf.shared.Problem;

/// Says whether what was seen can go into the stock ledger, and writes it there: all of it, or nothing.
///
/// @param stock reads lots
/// @param zone the shop's, by which a moment has its day
record SightingJudge(StockReader stock, ZoneId zone) {
    /// A telephone's clock may be fast by so much; the ledger allows as much.
    private static final Duration FAST_CLOCK = Duration.ofMinutes(10);

    /// So many entries of a lot are looked through for what happened after a sighting.
    private static final int LATEST = 500;

    /// @param asSeen somebody decided that the stock is as it was seen, whatever came after
    /// @return what stands in its way; then nothing was written
    Optional<Problem> write(Session session, Sighting sighting, boolean asSeen, Instant now) throws SQLException {
        Optional<Problem> unknown = plant(session, sighting, asSeen);
        if (unknown.isPresent()) {
            return unknown;
        }
        boolean future = sighting.seenAt().isAfter(now.plus(FAST_CLOCK));
        if (future && !asSeen) {
            return Optional.of(
                    Problem.of("walk.future", sighting.seenAt().toString()).with("now", LedgerRow.moment(now)));
        }
        if (sighting.lot().isEmpty()) {
            // how a plant looks may be told of all its lots, a count may not
            return sighting.count().map(count -> Problem.of("walk.lot.missing", count.toString()));
        }
        Optional<LotRecord> lot = stock.lot(session, sighting.lot().get());
        if (lot.isEmpty()) {
            return Optional.of(Problem.of("walk.lot.unknown", sighting.lot().get()));
        }
        if (!lot.get().item().plant().equals(sighting.plant())) {
            return Optional.of(Problem.of("walk.lot.other.plant", lot.get().lot())
                    .with("plant", lot.get().item().plant().text()));
        }
        Instant seenAt = future ? now : sighting.seenAt();
        return sighting.speaksOfStock() ? record(session, sighting, lot.get(), seenAt, asSeen, now) : Optional.empty();
    }

    private static Optional<Problem> plant(Session session, Sighting sighting, boolean asSeen) throws SQLException {
        Optional<Boolean> retired = session.first(
                "SELECT retired FROM plant WHERE withdrawn = 0 AND plant_key = ?",
                row -> row.getInt(1) == 1,
                sighting.plant().text());
        if (retired.isEmpty()) {
            return Optional.of(Problem.of("walk.plant.unknown", sighting.plant().text()));
        }
        return retired.get() && !asSeen
                ? Optional.of(Problem.of("walk.plant.retired", sighting.plant().text()))
                : Optional.empty();
    }

    private Optional<Problem> record(
            Session session, Sighting sighting, LotRecord lot, Instant seenAt, boolean asSeen, Instant now)
            throws SQLException {
        LocalDate day = seenAt.atZone(zone).toLocalDate();
        List<LedgerLine> after = LedgerReader.lines(session, lot.lot(), LATEST).stream()
                .filter(line -> line.happenedAt().isAfter(seenAt))
                .toList();
        int since = after.stream().mapToInt(LedgerLine::change).sum();
        Optional<Problem> conflict =
                asSeen ? Optional.empty() : later(sighting, after, day).or(() -> tooFew(sighting, lot, since));
        if (conflict.isPresent()) {
            return conflict;
        }
        List<LedgerEntry> entries = new ArrayList<>();
        if (!sighting.conditions().isEmpty()) {
            entries.add(entry(sighting, new StockEvent.Seen(sighting.conditions(), day), ":seen", seenAt));
        }
        // plants that came or went since were not seen: the count of then is carried on to now
        sighting.count()
                .ifPresent(found -> entries.add(entry(
                        sighting,
                        new StockEvent.Counted(asSeen ? found : found + since),
                        ":count",
                        asSeen ? now : seenAt)));
        return post(session, entries, now);
    }

    private static Optional<Problem> post(Session session, List<LedgerEntry> entries, Instant now) throws SQLException {
        LedgerBook book = LedgerBook.open(session, entries, now);
        for (LedgerEntry entry : entries) {
            if (book.post(entry) instanceof LedgerResult.Refused(Problem problem)) {
                return Optional.of(problem);
            }
        }
        SqlStockLedger.write(session, book, now);
        return Optional.empty();
    }

    private static LedgerEntry entry(Sighting sighting, StockEvent event, String part, Instant at) {
        String why = sighting.remark().isBlank() ? "crop walk" : "crop walk: " + sighting.remark();
        return new LedgerEntry(
                sighting.lot().orElseThrow(), event, sighting.who(), why, sighting.key() + part, Optional.of(at));
    }

    /// Somebody who counted later knows better, and somebody who looked later on the same day. A look
    /// on an earlier day than the last one is history by the ledger's own rule and changes nothing.
    private static Optional<Problem> later(Sighting sighting, List<LedgerLine> after, LocalDate day) {
        return after.stream()
                .filter(line ->
                        line.kind() == LedgerKind.COUNTED && sighting.count().isPresent()
                                || line.kind() == LedgerKind.SEEN
                                        && !sighting.conditions().isEmpty()
                                        && line.detail().startsWith(day.toString()))
                .reduce((first, last) -> last)
                .map(line -> Problem.of(
                                line.kind() == LedgerKind.COUNTED ? "walk.count.later" : "walk.seen.later",
                                line.kind() == LedgerKind.COUNTED ? Integer.toString(line.stated()) : line.detail())
                        .with("lot", line.lot())
                        .with("who", line.who())
                        .with("when", LedgerRow.moment(line.happenedAt()))
                        .with("found", sighting.count().map(Object::toString).orElse("")));
    }

    private static Optional<Problem> tooFew(Sighting sighting, LotRecord lot, int since) {
        if (sighting.count().isEmpty()) {
            return Optional.empty();
        }
        int found = sighting.count().get();
        if (found + since < 0) {
            return Optional.of(Problem.of("walk.count.impossible", Integer.toString(found))
                    .with("lot", lot.lot())
                    .with("gone", Integer.toString(-since)));
        }
        return found + since < lot.held()
                ? Optional.of(Problem.of("walk.count.held", Integer.toString(found))
                        .with("lot", lot.lot())
                        .with("held", Integer.toString(lot.held())))
                : Optional.empty();
    }
}
