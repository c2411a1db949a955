package org.benchleaf.bench;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadLocalRandom;
import org.benchleaf.catalog.Catalog;
import org.benchleaf.catalog.CatalogLocation;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.LedgerResult;
import org.benchleaf.catalog.ledger.LedgerEntry;
import org.benchleaf.catalog.ledger.StockEvent;
import org.benchleaf.catalog.model.LotRecord;

/// Writes entries into the ledger of a catalog of 1,000 plants and waits until each is safe on the disk: one client,
/// then sixteen, on SQLite and on a PostgreSQL of its own whose disk is waited for too.
final class LedgerBench {
    private static final int PLANTS = 1000;
    private static final int CLIENTS = 16;
    private static final int NEWS = 100;

    private LedgerBench() {}

    /// @param entries written in all by each run; one client alone writes an eighth of them
    static void run(int entries, PrintStream out) throws IOException {
        Path folder = Files.createTempDirectory("benchleaf-ledger");
        try {
            run("SQLite, synchronous=FULL", new CatalogLocation.InFile(folder.resolve("bench.db")), entries, out);
            Path data = folder.resolve("postgres");
            try (EmbeddedPostgres server = EmbeddedPostgres.builder()
                    .setDataDirectory(data)
                    .setServerConfig("fsync", "on")
                    .setServerConfig("full_page_writes", "on")
                    .setServerConfig("synchronous_commit", "on")
                    .start()) {
                CatalogLocation location = new CatalogLocation.OnServer(
                        server.getJdbcUrl("postgres", "postgres"), Optional.empty(), Optional.empty());
                run("PostgreSQL, fsync=on", location, entries, out);
            }
        } finally {
            NeedBench.delete(folder);
        }
    }

    private static void run(String engine, CatalogLocation location, int entries, PrintStream out) {
        try (Catalog catalog = Catalog.create(location, Clock.systemUTC())) {
            catalog.apply(SyntheticCatalog.plan(catalog.view().revision(), 0, PLANTS));
            List<String> lots = new ArrayList<>();
            catalog.view()
                    .forEachStock(
                            stock -> stock.lots().stream().map(LotRecord::lot).forEach(lots::add));
            write(catalog, lots, CLIENTS, entries / 10, "warm");
            for (int clients : new int[] {1, CLIENTS}) {
                int written = clients == 1 ? entries / 8 : entries;
                long start = System.nanoTime();
                Figures figures = write(catalog, lots, clients, written, "c" + clients);
                double seconds = (System.nanoTime() - start) / 1e9;
                out.printf("%s, %d clients: %,.0f entries a second; %s%n", engine, clients, written / seconds, figures);
            }
            news(engine, catalog, location, lots.getFirst(), out);
            if (!catalog.check().isEmpty()) {
                throw new IllegalStateException("the ledger is not true: " + catalog.check());
            }
        }
    }

    /// How soon another program on the same catalog is told of an entry that is safe on the disk.
    private static void news(String engine, Catalog catalog, CatalogLocation location, String lot, PrintStream out) {
        long[] nanos = new long[NEWS];
        BlockingQueue<CatalogRevision> told = new LinkedBlockingQueue<>();
        try (Catalog there = Catalog.open(location, Clock.systemUTC());
                Catalog.Following following = there.follow(told::add)) {
            for (int number = 0; number < NEWS; number++) {
                Thread.sleep(ThreadLocalRandom.current().nextInt(NEWS)); // at no fixed beat of who looks
                catalog.ledger().record(LedgerEntry.of(lot, new StockEvent.Received(1), "bench", "", "news-" + number));
                long written = System.nanoTime();
                told.take();
                nanos[number] = System.nanoTime() - written;
            }
        } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
        }
        out.printf("%s, told to another program: %s%n", engine, new Figures(nanos));
    }

    private static Figures write(Catalog catalog, List<String> lots, int clients, int entries, String prefix) {
        int each = entries / clients;
        List<Callable<long[]>> writers = new ArrayList<>();
        for (int client = 0; client < clients; client++) {
            String name = prefix + "-" + client;
            Random random = new Random(client);
            writers.add(() -> write(catalog, lots, each, name, random));
        }
        long[] all = new long[each * clients];
        try (ExecutorService threads = Executors.newFixedThreadPool(clients)) {
            int at = 0;
            for (Future<long[]> written : threads.invokeAll(writers)) {
                System.arraycopy(written.get(), 0, all, at, each);
                at += each;
            }
        } catch (InterruptedException | ExecutionException failed) {
            throw new IllegalStateException(failed);
        }
        return new Figures(all);
    }

    /// What sellers write: half sales, the rest goods received, holds and what becomes of them.
    private static long[] write(Catalog catalog, List<String> lots, int entries, String name, Random random) {
        long[] nanos = new long[entries];
        Optional<LedgerEntry> held = Optional.empty();
        for (int number = 0; number < entries; number++) {
            String key = name + "-" + number + "-" + ThreadLocalRandom.current().nextInt();
            LedgerEntry entry;
            if (held.isPresent() && random.nextBoolean()) {
                String hold = held.get().key();
                entry = LedgerEntry.of(
                        held.get().lot(), new StockEvent.Shipped(1, Optional.of(hold)), name, "bench", key);
                held = Optional.empty();
            } else {
                StockEvent event = switch (random.nextInt(4)) {
                    case 0 -> new StockEvent.Received(2);
                    case 1 -> new StockEvent.Held(1, Optional.empty());
                    default -> new StockEvent.Shipped(1);
                };
                entry = LedgerEntry.of(lots.get(random.nextInt(lots.size())), event, name, "bench", key);
            }
            long start = System.nanoTime();
            LedgerResult result = catalog.ledger().record(entry);
            nanos[number] = System.nanoTime() - start;
            if (result instanceof LedgerResult.Applied && entry.event() instanceof StockEvent.Held) {
                held = Optional.of(entry);
            }
        }
        return nanos;
    }
}
