package org.benchleaf.catalog.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.benchleaf.catalog.CatalogUnusable;
import org.benchleaf.shared.Problem;
import org.jspecify.annotations.Nullable;

/// A small fixed number of connections, opened when first needed and lent to one caller at a time.
final class Connections implements AutoCloseable {
    /// Opens a connection.
    interface Opener {
        Connection open() throws SQLException;
    }

    /// Says whether a connection that was idle can still be used.
    interface Health {
        boolean isGood(Connection connection) throws SQLException;
    }

    private record Idle(Session session, long since) {}

    /// A connection used so lately is not asked whether it lives.
    private static final long FRESH_NANOS = 50_000_000L;

    /// How long a caller waits for another one to be done; longer than the database waits for another program.
    private static final int PATIENCE_SECONDS = 60;

    private final Opener opener;
    private final Health health;
    private final int size;
    private final Semaphore free;
    private final Deque<Idle> idle = new ArrayDeque<>();

    Connections(int size, Opener opener, Health health) {
        this.size = size;
        this.opener = opener;
        this.health = health;
        this.free = new Semaphore(size, true); // first come, first served: a writer among many must not starve
    }

    Session lend() throws SQLException {
        try {
            if (!free.tryAcquire(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                throw new CatalogUnusable(Problem.of("catalog.busy", PATIENCE_SECONDS + " s"));
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new CatalogUnusable(Problem.of("catalog.interrupted", ""), stopped);
        }
        try {
            for (Idle waiting = takeIdle(); waiting != null; waiting = takeIdle()) {
                if (System.nanoTime() - waiting.since() < FRESH_NANOS
                        || isGood(waiting.session().connection())) {
                    return waiting.session();
                }
                close(waiting.session());
            }
            return new Session(opener.open());
        } catch (SQLException | RuntimeException refused) {
            free.release();
            throw refused;
        }
    }

    private boolean isGood(Connection connection) {
        try {
            return health.isGood(connection);
        } catch (SQLException broken) {
            return false;
        }
    }

    private @Nullable Idle takeIdle() {
        synchronized (idle) {
            return idle.pollFirst();
        }
    }

    /// Takes a connection back whose transaction is over.
    void takeBack(Session session) {
        synchronized (idle) {
            idle.addFirst(new Idle(session, System.nanoTime())); // the one used last has the warmest cache
        }
        free.release();
    }

    /// Takes a connection back that nobody should have again; the next caller gets a new one.
    void discard(Session session) {
        close(session);
        free.release();
    }

    private static void close(Session session) {
        try {
            session.connection().close();
        } catch (SQLException broken) {
            // it is of no use either way, and why it came here is what the caller hears of
        }
    }

    /// Waits for what is under way, then closes every connection; none is lent afterwards.
    @Override
    public void close() throws SQLException {
        free.acquireUninterruptibly(size);
        synchronized (idle) {
            for (Idle waiting : idle) {
                waiting.session().connection().close();
            }
            idle.clear();
        }
    }
}
