package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.time.Duration;
import java.util.function.Consumer;
import org.benchleaf.catalog.CatalogException;
import org.benchleaf.catalog.CatalogRevision;
import org.jspecify.annotations.Nullable;

/// Looks at the catalog's state again and again, at once when there is a hint and else twice a second, and tells
/// when it is another one. A database that is gone for a while only makes it wait.
public final class ChangeWatch implements AutoCloseable {
    private static final System.Logger LOG = System.getLogger(ChangeWatch.class.getName());
    private static final Duration LONGEST = Duration.ofMillis(400);
    private static final Duration AFTER_TROUBLE = Duration.ofMillis(200);

    private final Database database;
    private final Consumer<CatalogRevision> follower;
    private final Thread thread;
    private CatalogRevision told;
    private volatile boolean over;

    private ChangeWatch(Database database, Consumer<CatalogRevision> follower) {
        this.database = database;
        this.follower = follower;
        this.told = database.read(State::revision);
        this.thread = Thread.ofPlatform().daemon().name("benchleaf-changes").unstarted(this::watch);
    }

    static ChangeWatch start(Database database, Consumer<CatalogRevision> follower) {
        ChangeWatch watch = new ChangeWatch(database, follower);
        watch.thread.start();
        return watch;
    }

    private void watch() {
        @Nullable ChangeHint hint = null;
        while (!over) {
            try {
                if (hint == null) {
                    hint = database.hint();
                    look(); // what came before there was somebody to hear the hint
                }
                hint.await(LONGEST);
                look();
            } catch (InterruptedException stopped) {
                over = true;
            } catch (SQLException | CatalogException trouble) {
                close(hint);
                hint = null;
                rest(trouble);
            } catch (RuntimeException unexpected) {
                // a follower that stumbles must not stay behind for ever
                LOG.log(System.Logger.Level.WARNING, "following the catalog failed and goes on", unexpected);
                rest(unexpected);
            }
        }
        close(hint);
    }

    private void look() {
        CatalogRevision now = database.read(State::revision);
        if (!now.equals(told)) {
            follower.accept(now);
            told = now;
        }
    }

    private void rest(Exception trouble) {
        if (!over) {
            LOG.log(System.Logger.Level.DEBUG, "the catalog cannot be followed just now", trouble);
            try {
                Thread.sleep(AFTER_TROUBLE);
            } catch (InterruptedException stopped) {
                over = true;
            }
        }
    }

    private static void close(@Nullable ChangeHint hint) {
        try {
            if (hint != null) {
                hint.close();
            }
        } catch (SQLException gone) {
            // it is closed either way
        }
    }

    @Override
    public void close() {
        over = true; // and no interrupt: a follower that writes an index would lose its file by it
        try {
            thread.join(Duration.ofSeconds(5));
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }
}
