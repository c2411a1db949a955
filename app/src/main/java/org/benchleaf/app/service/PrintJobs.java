package org.benchleaf.app.service;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.IntConsumer;
import org.benchleaf.app.Refusal;
import org.benchleaf.catalog.CatalogException;
import org.benchleaf.render.PrintRefused;
import org.benchleaf.shared.Problem;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/// Prints one after the other while those who ordered them look at something else; the newest few are kept. A server
/// that stops forgets them: paper that was not downloaded is made anew.
public final class PrintJobs {
    /// A name that no backup takes along.
    private static final String FOLDER = "print";

    private static final Logger LOG = LoggerFactory.getLogger(PrintJobs.class);
    private static final int MOST = 20;
    private static final int IDLE_SECONDS = 30;

    private final Path folder;
    private final Map<String, PrintJob> jobs = new LinkedHashMap<>();
    private final ThreadPoolExecutor press = new ThreadPoolExecutor(
            1,
            1,
            IDLE_SECONDS,
            TimeUnit.SECONDS,
            new LinkedBlockingQueue<>(),
            Thread.ofPlatform().daemon().name("press").factory());

    /// @param workspace folder in which the files wait
    public PrintJobs(Path workspace) {
        this.folder = workspace.resolve(FOLDER);
        press.allowCoreThreadTimeOut(true); // a server that is opened anew leaves none behind
    }

    /// Something that takes long.
    public interface Work {
        PressOutcome print(IntConsumer progress, Path file);
    }

    /// Begins, or waits for its turn.
    public PrintJob start(String who, Work work) {
        String id = UUID.randomUUID().toString();
        PrintJob job = new PrintJob(id, who, folder.resolve(id + ".pdf"), 0, Optional.empty(), Optional.empty());
        keep(job);
        press.execute(() -> run(job, work));
        return job;
    }

    private void run(PrintJob job, Work work) {
        try {
            keep(job.done(work.print(pages -> keep(job.at(pages)), job.file())));
        } catch (Refusal refusal) {
            keep(job.refused(refusal.problem()));
        } catch (CatalogException refusal) {
            keep(job.refused(refusal.problem()));
        } catch (PrintRefused refusal) {
            keep(job.refused(refusal.problem()));
        } catch (RuntimeException fault) {
            LOG.error("a print failed", fault);
            keep(job.refused(Problem.of("desk.print.fault", "")));
        }
    }

    private synchronized void keep(PrintJob job) {
        boolean fresh = jobs.put(job.id(), job) == null;
        if (fresh && jobs.size() > MOST) {
            PrintJob oldest = jobs.values().iterator().next();
            jobs.remove(oldest.id());
            try {
                Files.deleteIfExists(oldest.file());
            } catch (IOException kept) {
                throw new UncheckedIOException(kept);
            }
        }
    }

    /// As it stands now, for the one who ordered it.
    public synchronized Optional<PrintJob> find(String id, String who) {
        return Optional.ofNullable(jobs.get(id)).filter(job -> job.who().equals(who));
    }
}
