package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.locks.ReentrantLock;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.CatalogUnusable;
import org.benchleaf.catalog.CatalogView.Change;
import org.benchleaf.catalog.LedgerResult;
import org.benchleaf.catalog.StockLedger;
import org.benchleaf.catalog.ledger.Hold;
import org.benchleaf.catalog.ledger.LedgerEntry;
import org.benchleaf.catalog.ledger.LedgerLine;
import org.benchleaf.catalog.model.LotRecord;
import org.jspecify.annotations.Nullable;

/// The stock ledger over the database: entries, counts, holds and the change feed in one transaction.
///
/// Waiting for the disk is what an entry costs. So entries that arrive while one transaction waits are put into the
/// next one together: whoever comes to write first writes for all. Each returns only once its transaction is safe.
final class SqlStockLedger implements StockLedger {
    /// Entries in one transaction; so many fill one query's keys.
    private static final int MOST_TOGETHER = 256;

    private final Database database;
    private final Clock clock;
    private final StockReader stock;
    private final ConcurrentLinkedQueue<Ticket> waiting = new ConcurrentLinkedQueue<>();
    private final ReentrantLock writing = new ReentrantLock();

    SqlStockLedger(Database database, Clock clock, StockReader stock) {
        this.database = database;
        this.clock = clock;
        this.stock = stock;
    }

    /// An entry and what became of it; read and written under the lock only.
    private static final class Ticket {
        private final LedgerEntry entry;
        private @Nullable LedgerResult result;
        private @Nullable RuntimeException failure;

        private Ticket(LedgerEntry entry) {
            this.entry = entry;
        }

        private boolean isDone() {
            return result != null || failure != null;
        }
    }

    @Override
    public LedgerResult record(LedgerEntry entry) {
        Ticket ticket = new Ticket(entry);
        waiting.add(ticket);
        writing.lock();
        try {
            while (!ticket.isDone()) {
                writeWaiting();
            }
        } finally {
            writing.unlock();
        }
        if (ticket.failure != null) {
            throw ticket.failure;
        }
        return java.util.Objects.requireNonNull(ticket.result);
    }

    private void writeWaiting() {
        List<Ticket> together = new ArrayList<>();
        while (together.size() < MOST_TOGETHER) {
            Ticket next = waiting.poll();
            if (next == null) {
                break;
            }
            together.add(next);
        }
        try {
            List<LedgerResult> results =
                    write(together.stream().map(ticket -> ticket.entry).toList());
            for (int at = 0; at < results.size(); at++) {
                together.get(at).result = results.get(at);
            }
        } catch (RuntimeException failed) {
            alone(together, failed);
        }
    }

    /// What failed for all is tried for each, so that nobody suffers for another's entry. An entry that was written
    /// all the same, its answer lost on the way, is known by its key.
    private void alone(List<Ticket> together, RuntimeException failed) {
        boolean worthAnotherTry = together.size() > 1 || failed instanceof CatalogUnusable lost && lost.isLost();
        for (Ticket ticket : together) {
            try {
                if (!worthAnotherTry) {
                    throw failed;
                }
                ticket.result = write(List.of(ticket.entry)).getFirst();
            } catch (RuntimeException again) {
                ticket.failure = again;
            }
        }
    }

    private List<LedgerResult> write(List<LedgerEntry> entries) {
        Instant now = clock.instant();
        return database.write(session -> {
            LedgerBook book = LedgerBook.open(session, entries, now);
            List<LedgerResult> results = entries.stream().map(book::post).toList();
            if (!book.rows().isEmpty()) {
                write(session, book, now);
            }
            return results;
        });
    }

    private static void write(Session session, LedgerBook book, Instant now) throws SQLException {
        CatalogRevision next = new CatalogRevision(State.revision(session).number() + 1);
        book.lots().write(session, next.number());
        try (LedgerEntries entries = new LedgerEntries(session, now)) {
            for (LedgerRow row : book.rows()) {
                entries.add(row);
            }
        }
        book.lots().writeHolds(session);
        Set<Integer> plants = book.lots().changedPlants();
        if (!plants.isEmpty()) {
            ChangeFeed.record(session, plants, Change.Kind.STOCK, next);
            State.advance(session, next, now);
        }
    }

    @Override
    public Optional<LotRecord> lot(String lot) {
        return database.read(session -> stock.lot(session, lot));
    }

    @Override
    public Optional<Hold> hold(String key) {
        return database.read(session -> LedgerReader.hold(session, key));
    }

    @Override
    public List<Hold> holds(String lot) {
        Instant now = clock.instant();
        return database.read(session -> LedgerReader.holds(session, lot)).stream()
                .filter(hold -> hold.isOpenAt(now))
                .toList();
    }

    @Override
    public List<LedgerLine> history(String lot, int most) {
        return database.read(session -> LedgerReader.lines(session, lot, most));
    }
}
