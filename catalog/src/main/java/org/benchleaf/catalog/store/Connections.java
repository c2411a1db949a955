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

    /// How long a caller waits for another one to be done; longer than the database waits for another program.
    private static final int PATIENCE_SECONDS = 60;

    private final Opener opener;
    private final int size;
    private final Semaphore free;
    private final Deque<Connection> idle = new ArrayDeque<>();

    Connections(int size, Opener opener) {
        this.size = size;
        this.opener = opener;
        this.free = new Semaphore(size, true); // first come, first served: a writer among many must not starve
    }

    Connection lend() throws SQLException {
        try {
            if (!free.tryAcquire(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                throw new CatalogUnusable(Problem.of("catalog.busy", PATIENCE_SECONDS + " s"));
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new CatalogUnusable(Problem.of("catalog.interrupted", ""), stopped);
        }
        try {
            Connection waiting = takeIdle();
            return waiting != null ? waiting : opener.open();
        } catch (SQLException | RuntimeException refused) {
            free.release();
            throw refused;
        }
    }

    private @Nullable Connection takeIdle() {
        synchronized (idle) {
            return idle.pollFirst();
        }
    }

    /// Takes a connection back whose transaction is over.
    void takeBack(Connection connection) {
        synchronized (idle) {
            idle.addFirst(connection); // the one used last has the warmest cache
        }
        free.release();
    }

    /// Takes a connection back that nobody should have again; the next caller gets a new one.
    void discard(Connection connection) {
        try {
            connection.close();
        } catch (SQLException broken) {
            // it is of no use either way, and why it came here is what the caller hears of
        } finally {
            free.release();
        }
    }

    /// Waits for what is under way, then closes every connection; none is lent afterwards.
    @Override
    public void close() throws SQLException {
        free.acquireUninterruptibly(size);
        synchronized (idle) {
            for (Connection connection : idle) {
                connection.close();
            }
            idle.clear();
        }
    }
}
