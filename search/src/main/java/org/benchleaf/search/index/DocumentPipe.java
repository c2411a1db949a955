package org.benchleaf.search.index;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.Semaphore;
import java.util.stream.Stream;
import org.apache.lucene.index.IndexWriter;
import org.benchleaf.catalog.model.PlantRecord;

/// Turns plants into documents on all processors while the catalog is still being read. Plants are handed over
/// by one thread; their order among the documents is not promised.
final class DocumentPipe implements AutoCloseable {
    private static final int BATCH = 250;
    /// Batches that wait at most, for a worker each; then the reader waits.
    private static final int WAITING = 2;

    private final IndexWriter writer;
    private final int processors;
    private final ExecutorService workers;
    private final Semaphore room;
    private final List<Future<?>> work = new ArrayList<>();
    private List<PlantRecord> batch = new ArrayList<>(BATCH);

    DocumentPipe(IndexWriter writer) {
        this.processors = Runtime.getRuntime().availableProcessors();
        this.writer = writer;
        this.room = new Semaphore(processors * (1 + WAITING));
        this.workers = Executors.newFixedThreadPool(
                processors, Thread.ofPlatform().daemon().name("index-", 0).factory());
    }

    void add(PlantRecord plant) {
        batch.add(plant);
        if (batch.size() == BATCH) {
            handOver();
        }
    }

    private void handOver() {
        List<PlantRecord> plants = batch;
        batch = new ArrayList<>(BATCH);
        room.acquireUninterruptibly();
        work.add(workers.submit(() -> {
            try {
                for (PlantRecord plant : plants) {
                    writer.addDocument(PlantDocument.of(plant));
                }
                return plants.size();
            } finally {
                room.release();
            }
        }));
    }

    /// Waits until all are written; each worker then packs what it has gathered, which a commit would do alone.
    ///
    /// @throws IOException when one could not be
    void finish() throws IOException {
        handOver();
        await(work);
        await(Stream.generate(() -> workers.submit(writer::flushNextBuffer))
                .limit(processors)
                .toList());
    }

    private static void await(List<? extends Future<?>> work) throws IOException {
        try {
            for (Future<?> one : work) {
                one.get();
            }
        } catch (ExecutionException failed) {
            throw new IOException(failed.getCause());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IOException(stopped);
        }
    }

    @Override
    public void close() {
        workers.shutdownNow();
    }
}
