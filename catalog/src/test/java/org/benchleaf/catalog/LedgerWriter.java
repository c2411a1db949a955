package org.benchleaf.catalog;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.catalog.intake.PlantDraft;
import org.benchleaf.catalog.ledger.LedgerEntry;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.shared.name.BotanicalName;

/// A program of its own that writes until it is killed: entries on several threads, each printed once it is
/// acknowledged, and imports.
public final class LedgerWriter {
    static final int PLANTS_OF_AN_IMPORT = 40;
    private static final int THREADS = 4;

    private LedgerWriter() {}

    /// Starts the program; the caller ends it.
    static Process start(CatalogLocation location, String prefix, long seed) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "--enable-native-access=ALL-UNNAMED",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                        LedgerWriter.class.getName(),
                        Engine.argument(location),
                        prefix,
                        Long.toString(seed))
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    /// @param arguments where the catalog is, a prefix for keys, and a seed
    public static void main(String... arguments) throws InterruptedException {
        String prefix = arguments[1];
        Random seeds = new Random(Long.parseLong(arguments[2]));
        try (Catalog catalog = Catalog.open(Engine.location(arguments[0]), Clock.systemUTC())) {
            List<Thread> writers = IntStream.range(0, THREADS)
                    .mapToObj(number -> {
                        Random random = new Random(seeds.nextLong());
                        return Thread.ofPlatform().start(() -> write(catalog, prefix + "-" + number, random));
                    })
                    .toList();
            AtomicInteger imports = new AtomicInteger();
            while (writers.stream().allMatch(Thread::isAlive)) {
                String key = prefix + "-" + imports.incrementAndGet();
                catalog.apply(Drafts.plan(catalog, ImportPlan.Rank.OWN, plants(key), List.of()));
            }
        }
    }

    private static void write(Catalog catalog, String prefix, Random random) {
        RandomEvents events = new RandomEvents(random);
        for (int number = 0; true; number++) {
            LedgerEntry entry = events.next(prefix + "-" + number);
            if (catalog.ledger().record(entry) instanceof LedgerResult.Applied) {
                events.applied(entry);
                System.out.println(entry.key() + " " + entry.lot() + " "
                        + entry.event().kind() + " " + entry.event().stated());
                System.out.flush();
            }
        }
    }

    private static List<PlantDraft> plants(String key) {
        return IntStream.range(0, PLANTS_OF_AN_IMPORT)
                .mapToObj(plant -> Drafts.plant(
                        BotanicalName.ofSpecies("Itea", "virginica").withCultivar(key + "-" + plant),
                        Drafts.fact(Attributes.HEIGHT, "3-5 ft")))
                .toList();
    }
}
