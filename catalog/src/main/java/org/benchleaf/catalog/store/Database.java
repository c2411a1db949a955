package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.util.concurrent.atomic.AtomicBoolean;
import org.benchleaf.catalog.CatalogUnusable;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;

/// The two ways to the database: a read that sees one state, and a write that happens as a whole or not at all.
final class Database implements AutoCloseable {
    /// More threads than this wait their turn; a read takes a few milliseconds.
    private static final int READERS = 8;

    /// Work inside one transaction.
    interface Work<T> {
        T in(Handle handle) throws SQLException;
    }

    private final Dialect dialect;
    private final Connections readers;
    private final Connections writer;
    private final Jdbi reading;
    private final Jdbi writing;
    private final AtomicBoolean closed = new AtomicBoolean();

    Database(Dialect dialect) {
        this.dialect = dialect;
        this.readers = new Connections(READERS, dialect::connectReader);
        this.writer = new Connections(1, dialect::connectWriter); // one writer at a time, and in the order they came
        this.reading = Jdbi.create(readers);
        this.writing = Jdbi.create(writer);
    }

    Dialect dialect() {
        return dialect;
    }

    <T> T read(Work<T> work) {
        return run(reading, work);
    }

    <T> T write(Work<T> work) {
        return run(writing, work);
    }

    private <T> T run(Jdbi jdbi, Work<T> work) {
        if (closed.get()) {
            throw new IllegalStateException("the catalog is closed");
        }
        try {
            return jdbi.inTransaction(work::in);
        } catch (SQLException refused) {
            throw new CatalogUnusable(dialect.explain(refused), refused);
        } catch (JdbiException wrapped) {
            for (Throwable cause = wrapped; cause != null; cause = cause.getCause()) {
                if (cause instanceof SQLException refused) {
                    throw new CatalogUnusable(dialect.explain(refused), wrapped);
                }
                if (cause instanceof CatalogUnusable known) {
                    throw known;
                }
            }
            throw wrapped;
        }
    }

    @Override
    public void close() {
        if (closed.getAndSet(true)) {
            return;
        }
        try {
            readers.close();
            writer.close(); // last, so that it is the one that folds the log back into the file
        } catch (SQLException refused) {
            throw new CatalogUnusable(dialect.explain(refused), refused);
        }
    }
}
