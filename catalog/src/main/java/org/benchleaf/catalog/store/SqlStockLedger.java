package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.locks.Condition;
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
/// Waiting for the disk is what an entry costs. So entries that arrive while one transaction waits are
/// put into the
/// next one together: whoever comes to write first writes for all. Each returns only once its
/// transaction is safe.
final class SqlStockLedger implements StockLedger {
    /// Entries in one transaction; so many fill one query's keys.
    private static final int MOST_TOGETHER = 256;

    private final Database database;
    private final Clock clock;
    private final StockReader stock;
    private final ReentrantLock lock = new ReentrantLock();
    private final Condition news = lock.newCondition();
    private final Deque<Ticket> waiting = new ArrayDeque<>(); // under the lock
    private boolean busy; // under the lock: somebody writes

    SqlStockLedger(Database database, Clock clock, StockReader stock) {
        this.database = database;
        this.clock = clock;
        this.stock = stock;
    }

    /// An entry and what became of it; set by the one who writes, read by its own after taking the lock.
    private static final class Ticket {
        private final LedgerEntry entry;
        private volatile @Nullable LedgerResult result;
        private volatile @Nullable RuntimeException failure;

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
        List<Ticket> together = comeFirstOrWait(ticket);
        if (!together.isEmpty()) {
            try {
                write(together);
            } finally {
                done();
            }
        }
        RuntimeException failure = ticket.failure;
        if (failure != null) {
            throw failure;
        }
        return Objects.requireNonNull(ticket.result);
    }

    @Override
    public List<LedgerResult> recordTogether(List<LedgerEntry> entries) {
        Instant now = clock.instant();
        return database.write(session -> {
            LedgerBook book = LedgerBook.open(session, entries, now);
            List<LedgerResult> results = entries.stream().map(book::post).toList();
            boolean refused = results.stream().anyMatch(LedgerResult.Refused.class::isInstance);
            if (!refused && !book.rows().isEmpty()) {
                write(session, book, now);
            }
            return results;
        });
    }

    /// Waits until the entry is written by another one, or it is this one's turn to write.
    ///
    /// @return the entries to be written, this one among them; empty when it is written
    private List<Ticket> comeFirstOrWait(Ticket ticket) {
        lock.lock();
        try {
            waiting.add(ticket);
            while (busy && !ticket.isDone()) {
                news.awaitUninterruptibly(); // an entry that was taken along is written whoever gives up waiting
            }
            if (ticket.isDone()) {
                return List.of();
            }
            busy = true;
            waiting.remove(ticket);
            List<Ticket> together = new ArrayList<>(List.of(ticket));
            int most =
                    Thread.currentThread().isInterrupted() ? 1 : MOST_TOGETHER; // who must stop writes for nobody else
            while (together.size() < most && !waiting.isEmpty()) {
                together.add(waiting.remove());
            }
            return together;
        } finally {
            lock.unlock();
        }
    }

    private void done() {
        lock.lock();
        try {
            busy = false;
            news.signalAll();
        } finally {
            lock.unlock();
        }
    }

    private void write(List<Ticket> together) {
        try {
            List<LedgerResult> results =
                    post(together.stream().map(ticket -> ticket.entry).toList());
            for (int at = 0; at < results.size(); at++) {
                together.get(at).result = results.get(at);
            }
        } catch (RuntimeException failed) {
            alone(together, failed);
        }
    }

    /// What failed for all is tried for each, so that nobody suffers for another's entry. An entry
    /// that was written
    /// all the same, its answer lost on the way, is known by its key.
    private void alone(List<Ticket> together, RuntimeException failed) {
        boolean worthAnotherTry = together.size() > 1 || failed instanceof CatalogUnusable lost && lost.isLost();
        for (Ticket ticket : together) {
            try {
                if (!worthAnotherTry) {
                    throw failed;
                }
                ticket.result = post(List.of(ticket.entry)).getFirst();
            } catch (RuntimeException again) {
                ticket.failure = again;
            }
        }
    }

    private List<LedgerResult> post(List<LedgerEntry> entries) {
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

    /// Writes what a book accepted; the caller has the right to write.
    static void write(Session session, LedgerBook book, Instant now) throws SQLException {
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
