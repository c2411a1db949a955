package org.benchleaf.catalog.store;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.concurrent.atomic.AtomicBoolean;
import org.benchleaf.catalog.CatalogUnusable;

/// The two ways to the database: a read that sees one state, and a write that happens as a whole or not at all.
final class Database implements AutoCloseable {
    /// More threads than this wait their turn; a read takes a few milliseconds.
    private static final int READERS = 8;

    /// Work inside one transaction.
    interface Work<T> {
        T in(Session session) throws SQLException;
    }

    /// Connections tried before a lost one is the caller's to hear of: every idle one, and a new one.
    private static final int TRIES = READERS + 1;

    private final Dialect dialect;
    private final Connections readers;
    private final Connections writer;
    private final ThreadLocal<Session> underWay = new ThreadLocal<>();
    private final AtomicBoolean closed = new AtomicBoolean();

    Database(Dialect dialect) {
        this.dialect = dialect;
        this.readers = new Connections(READERS, dialect::connectReader, dialect::isAlive);
        // one writer at a time, and in the order they came
        this.writer = new Connections(1, dialect::connectWriter, dialect::isAlive);
    }

    Dialect dialect() {
        return dialect;
    }

    /// Reads one state. A read inside a read sees the state of the outer one and needs no connection of its own, so
    /// that readers can never wait for each other.
    <T> T read(Work<T> work) {
        Session outer = underWay.get();
        if (outer != null) {
            return explained(() -> work.in(outer));
        }
        return run(readers, session -> {
            underWay.set(session);
            try {
                return work.in(session);
            } finally {
                underWay.remove();
            }
        });
    }

    /// Writes as a whole: what the work throws takes everything back.
    <T> T write(Work<T> work) {
        return run(writer, work);
    }

    /// Does the work as [#write] would and takes everything back: what it returns is all that is left of it.
    <T> T rehearse(Work<T> work) {
        return run(writer, work, false);
    }

    private <T> T run(Connections connections, Work<T> work) {
        return run(connections, work, true);
    }

    private <T> T run(Connections connections, Work<T> work, boolean keep) {
        if (closed.get()) {
            throw new IllegalStateException("the catalog is closed");
        }
        return explained(() -> {
            Session session = begun(connections);
            Connection connection = session.connection();
            boolean whole = false;
            try {
                T result = work.in(session);
                if (keep) {
                    if (connections == writer) {
                        dialect.beforeCommit(connection);
                    }
                    connection.commit();
                    connection.setAutoCommit(true);
                    whole = true;
                }
                return result;
            } finally {
                if (whole || takenBack(connection)) {
                    connections.takeBack(session);
                } else {
                    connections.discard(session);
                }
            }
        });
    }

    /// A connection whose transaction has begun. One that was lost while idle is replaced: nothing was done on it
    /// yet.
    private Session begun(Connections connections) throws SQLException {
        for (int attempt = 1; true; attempt++) {
            Session session = connections.lend();
            Connection connection = session.connection();
            try {
                connection.setAutoCommit(false);
                if (connections == writer) {
                    dialect.beginWriting(connection);
                }
                return session;
            } catch (SQLException refused) {
                if (dialect.isLost(refused) || !takenBack(connection)) {
                    connections.discard(session);
                } else {
                    connections.takeBack(session);
                }
                if (!dialect.isLost(refused) || attempt == TRIES) {
                    throw refused;
                }
            }
        }
    }

    /// Undoes what was not committed.
    ///
    /// @return false when that failed too, as on a full disk, where the database has undone it already
    private static boolean takenBack(Connection connection) {
        try {
            connection.rollback();
            connection.setAutoCommit(true);
            return true;
        } catch (SQLException broken) {
            return false;
        }
    }

    /// Copies everything as of one state into a new file.
    void copy(Path file) {
        explained(() -> {
            try (Connection connection = dialect.connectReader()) {
                dialect.copy(connection, file);
            }
            return true;
        });
    }

    /// Something to wait for between two looks at the change feed.
    ChangeHint hint() throws SQLException {
        return dialect.connectHint();
    }

    /// Work that may fail in the database's words.
    private interface Attempt<T> {
        T make() throws SQLException;
    }

    private <T> T explained(Attempt<T> attempt) {
        try {
            return attempt.make();
        } catch (SQLException refused) {
            throw new CatalogUnusable(dialect.explain(refused), refused);
        }
    }

    @Override
    public void close() {
        if (closed.getAndSet(true)) {
            return;
        }
        explained(() -> {
            readers.close();
            writer.close(); // last, so that it is the one that folds the log back into the file
            return true;
        });
    }
}
