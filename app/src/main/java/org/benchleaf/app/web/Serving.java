package org.benchleaf.app.web;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.Settings;
import org.benchleaf.app.Workspace;
import org.benchleaf.catalog.Catalog;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/// Serves a workspace as its settings say. When their file changes, whoever wrote it, everything is opened anew at the
/// same port, which takes about a second; a file that cannot be read changes nothing.
public final class Serving implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Serving.class);
    private static final int SECONDS = 1;

    private final Path folder;
    private final Clock clock;
    private final String host;
    private final int port;
    private final ScheduledExecutorService watch = Executors.newSingleThreadScheduledExecutor(
            Thread.ofPlatform().daemon().name("settings").factory());
    private Optional<Open> open = Optional.empty();
    private String settings;

    /// What is opened anew together.
    private record Open(Benchleaf benchleaf, Catalog.Following following, Server server) {
        static Open of(Path folder, Clock clock, String host, int port) {
            Benchleaf benchleaf = Benchleaf.open(folder, clock);
            Catalog.Following following = benchleaf.follow();
            try {
                benchleaf.advice(); // told now, and not on some page
                return new Open(benchleaf, following, Server.start(benchleaf, host, port));
            } catch (RuntimeException refused) {
                following.close();
                benchleaf.close();
                throw refused;
            }
        }

        void close() {
            server.close();
            following.close();
            benchleaf.close();
        }
    }

    private Serving(Path folder, Clock clock, String host, int port) {
        this.folder = folder;
        this.clock = clock;
        this.host = host;
        this.settings = text();
        Open first = Open.of(folder, clock, host, port);
        this.port = first.server().port();
        this.open = Optional.of(first);
    }

    /// @param port to listen at, or 0 for any free one
    /// @throws Refusal when the workspace cannot be opened or the port is taken
    public static Serving start(Path folder, Clock clock, String host, int port) {
        Serving serving = new Serving(folder, clock, host, port);
        serving.watch.scheduleWithFixedDelay(serving::look, SECONDS, SECONDS, TimeUnit.SECONDS);
        return serving;
    }

    public int port() {
        return port;
    }

    /// What it goes by.
    public synchronized Settings settings() {
        return open.map(one -> one.benchleaf().settings())
                .orElseGet(() -> Settings.read(Workspace.at(folder).settingsFile()));
    }

    private String text() {
        try {
            return Files.readString(Workspace.at(folder).settingsFile());
        } catch (IOException | Refusal halfWritten) {
            return "";
        }
    }

    private synchronized void look() {
        String now = text();
        if (now.isEmpty() || now.equals(settings) && open.isPresent()) {
            return;
        }
        settings = now;
        try {
            Settings.read(Workspace.at(folder).settingsFile());
            open.ifPresent(Open::close);
            open = Optional.empty();
            open = Optional.of(Open.of(folder, clock, host, port));
        } catch (RuntimeException refused) {
            // when nothing is open it is tried again every second
            LOG.error("the settings of {} cannot be served", folder, refused);
        }
    }

    @Override
    public void close() {
        watch.shutdown();
        synchronized (this) {
            open.ifPresent(Open::close);
            open = Optional.empty();
        }
    }
}
