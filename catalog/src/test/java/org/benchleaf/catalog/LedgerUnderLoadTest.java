package org.benchleaf.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.benchleaf.catalog.Drafts.RED_MAPLE;
import static org.benchleaf.catalog.Drafts.lot;
import static org.benchleaf.catalog.Drafts.maples;
import static org.benchleaf.catalog.Drafts.plan;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.catalog.ledger.LedgerEntry;
import org.benchleaf.catalog.ledger.LedgerLine;
import org.benchleaf.catalog.ledger.StockEvent;
import org.benchleaf.catalog.model.LotRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.name.BotanicalName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/// The ledger under fire. `-Dbenchleaf.ledger.writers=64 -Dbenchleaf.ledger.operations=5000
/// -Dbenchleaf.ledger.kills=50` makes more of it.
@ParameterizedClass
@EnumSource(Engine.class)
class LedgerUnderLoadTest {
    private static final int WRITERS = Integer.getInteger("benchleaf.ledger.writers", 16);
    private static final int OPERATIONS = Integer.getInteger("benchleaf.ledger.operations", 1000);
    private static final int KILLS = Integer.getInteger("benchleaf.ledger.kills", 4);
    private static final int ALL = Integer.MAX_VALUE;

    @TempDir
    Path folder;

    private final Engine engine;

    LedgerUnderLoadTest(Engine engine) {
        this.engine = engine;
    }

    private void fill(Catalog catalog, int each) {
        catalog.apply(plan(
                catalog,
                ImportPlan.Rank.OWN,
                maples(),
                RandomEvents.lots().stream()
                        .map(number -> lot(number, RED_MAPLE, each))
                        .toList()));
    }

    private static PlantStock stock(Catalog catalog) {
        PlantKey maple = catalog.names().byName(RED_MAPLE).orElseThrow();
        return catalog.view().stock(List.of(maple)).values().iterator().next();
    }

    private static List<LedgerLine> lines(Catalog catalog) {
        return RandomEvents.lots().stream()
                .flatMap(lot -> catalog.ledger().history(lot, ALL).stream())
                .toList();
    }

    private static List<String> keys(List<LedgerLine> lines) {
        return lines.stream().flatMap(line -> line.key().stream()).toList();
    }

    /// One look at each, for there may be hundreds of thousands.
    private static void assertAllThere(List<String> keys, Set<String> acknowledged) {
        Set<String> missing = new HashSet<>(acknowledged);
        keys.forEach(missing::remove);
        assertThat(missing).isEmpty();
    }

    /// Counts are the sums of their entries, no count was ever below zero, no entry is there twice.
    private static void assertTrue(Catalog catalog) {
        assertThat(catalog.check()).isEmpty();
        List<LedgerLine> lines = lines(catalog);
        assertThat(lines).allSatisfy(line -> assertThat(line.count()).isNotNegative());
        assertThat(keys(lines)).doesNotHaveDuplicates();
        for (LotRecord lot : stock(catalog).lots()) {
            int sum = lines.stream()
                    .filter(line -> line.lot().equals(lot.lot()))
                    .mapToInt(LedgerLine::change)
                    .sum();
            assertThat(lot.count()).isEqualTo(sum);
        }
    }

    @Test
    void staysTrueAmongManyWritersWhoseEntriesArriveMoreThanOnce() throws Exception {
        try (Catalog catalog = engine.create(folder);
                ExecutorService threads = Executors.newCachedThreadPool()) {
            fill(catalog, 50);
            AtomicBoolean over = new AtomicBoolean();
            Future<Integer> reader = threads.submit(() -> readUntil(catalog, over));
            List<Callable<Set<String>>> writers = new ArrayList<>();
            for (int writer = 0; writer < WRITERS; writer++) {
                String name = "writer-" + writer;
                Random random = new Random(writer);
                writers.add(() -> write(catalog, name, random));
            }
            Set<String> acknowledged = new HashSet<>();
            for (Future<Set<String>> written : threads.invokeAll(writers)) {
                acknowledged.addAll(written.get());
            }
            over.set(true);
            assertThat(reader.get()).as("states that a reader saw meanwhile").isPositive();
            assertTrue(catalog);
            List<String> keys = keys(lines(catalog));
            assertAllThere(keys, acknowledged);
            assertThat(keys.stream().filter(key -> key.startsWith("writer-"))).hasSameSizeAs(acknowledged);
        }
    }

    /// @return the keys of the entries that were acknowledged
    private static Set<String> write(Catalog catalog, String name, Random random) {
        RandomEvents events = new RandomEvents(random);
        Set<String> acknowledged = new HashSet<>();
        List<LedgerEntry> sent = new ArrayList<>();
        for (int number = 0; number < OPERATIONS; number++) {
            if (!sent.isEmpty() && random.nextInt(10) == 0) {
                LedgerEntry again = sent.get(random.nextInt(sent.size()));
                assertThat(catalog.ledger().record(again)).isInstanceOf(LedgerResult.AlreadyApplied.class);
                continue;
            }
            LedgerEntry entry = events.next(name + "-" + number);
            if (catalog.ledger().record(entry) instanceof LedgerResult.Applied) {
                events.applied(entry);
                acknowledged.add(entry.key());
                sent.add(entry);
            }
        }
        return acknowledged;
    }

    private static int readUntil(Catalog catalog, AtomicBoolean over) throws InterruptedException {
        int states = 0;
        while (!over.get()) {
            // a count below zero would be refused by the record itself
            assertThat(stock(catalog).lots()).hasSize(RandomEvents.LOTS);
            states++;
            Thread.sleep(20);
        }
        return states;
    }

    @Test
    void neverSellsMoreThanThereIs() throws Exception {
        try (Catalog catalog = engine.create(folder);
                ExecutorService threads = Executors.newFixedThreadPool(8)) {
            fill(catalog, 100);
            List<Callable<Long>> sellers = new ArrayList<>();
            for (int seller = 0; seller < 8; seller++) {
                String name = "seller-" + seller;
                sellers.add(() -> sell(catalog, name));
            }
            long sold = 0;
            for (Future<Long> future : threads.invokeAll(sellers)) {
                sold += future.get();
            }
            assertThat(sold).isEqualTo(100);
            assertThat(catalog.ledger().lot("T0001").orElseThrow().count()).isZero();
            assertTrue(catalog);
        }
    }

    private static long sell(Catalog catalog, String seller) {
        long sold = 0;
        for (int entry = 0; entry < 25; entry++) {
            LedgerResult result = catalog.ledger()
                    .record(LedgerEntry.of("T0001", new StockEvent.Shipped(1), seller, "", seller + "-" + entry));
            sold += result instanceof LedgerResult.Applied ? 1 : 0;
        }
        return sold;
    }

    /// The program is killed with SIGKILL at moments that nobody chose, between entries and within them; what it had
    /// acknowledged is there once.
    @Test
    void keepsEveryAcknowledgedEntryOnceWhenTheProgramIsKilled() throws Exception {
        try (Catalog catalog = engine.create(folder)) {
            fill(catalog, 50);
        }
        Random random = new Random(20261125);
        Set<String> all = new HashSet<>();
        for (int round = 0; round < KILLS; round++) {
            List<String> acknowledged = killedWhileWriting("round-" + round, random);
            acknowledged.forEach(line -> all.add(line.split(" ")[0]));
            try (Catalog catalog = engine.open(folder)) {
                assertTrue(catalog);
                List<LedgerLine> lines = lines(catalog);
                assertAllThere(keys(lines), all);
                CatalogRevision before = catalog.view().revision();
                for (String line : acknowledged.subList(Math.max(0, acknowledged.size() - 20), acknowledged.size())) {
                    assertThat(catalog.ledger().record(again(lines, line.split(" ")[0])))
                            .isInstanceOf(LedgerResult.AlreadyApplied.class);
                }
                assertThat(catalog.view().revision())
                        .as("a repeated entry changes nothing")
                        .isEqualTo(before);
                assertThat(plantsOfImports(catalog) % LedgerWriter.PLANTS_OF_AN_IMPORT)
                        .as("an import is there as a whole or not at all")
                        .isZero();
            }
        }
    }

    /// The entry as it was sent, from the line that it became.
    private static LedgerEntry again(List<LedgerLine> lines, String key) {
        LedgerLine line = lines.stream()
                .filter(each -> each.key().equals(Optional.of(key)))
                .findFirst()
                .orElseThrow();
        StockEvent event = switch (line.kind()) {
            case RECEIVED -> new StockEvent.Received(line.stated());
            case COUNTED -> new StockEvent.Counted(line.stated());
            case HELD -> new StockEvent.Held(line.stated(), line.until());
            case RELEASED -> new StockEvent.Released(line.stated(), line.hold().orElseThrow());
            case SHIPPED -> new StockEvent.Shipped(line.stated(), line.hold());
            case LOST -> new StockEvent.Lost(line.stated());
            case MOVED -> new StockEvent.Moved(line.stated(), line.otherLot().orElseThrow());
            case READY ->
                new StockEvent.Ready(org.benchleaf.shared.measure.YearWeek.read(line.detail())
                        .toOptional());
            case SEEN ->
                new StockEvent.Seen(
                        Set.of(org.benchleaf.shared.stock.Condition.FULL),
                        java.time.LocalDate.parse(line.detail().substring(0, 10)));
        };
        return LedgerEntry.of(line.lot(), event, "somebody else", "sent again", key);
    }

    private static long plantsOfImports(Catalog catalog) {
        List<BotanicalName> names = new ArrayList<>();
        catalog.view().forEachPlant(plant -> names.add(plant.name()));
        return names.stream().filter(name -> name.genus().equals("Itea")).count();
    }

    private List<String> killedWhileWriting(String prefix, Random random) throws IOException {
        int afterEntries = 20 + random.nextInt(200);
        Process child = LedgerWriter.start(engine.location(folder), prefix, random.nextLong());
        List<String> acknowledged = new ArrayList<>();
        try (BufferedReader lines =
                new BufferedReader(new InputStreamReader(child.getInputStream(), StandardCharsets.UTF_8))) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                if (line.split(" ").length == 4) { // the last line may be cut off
                    acknowledged.add(line);
                }
                if (acknowledged.size() == afterEntries) {
                    child.toHandle().destroyForcibly(); // the handle: the process would throw unread lines away
                }
            }
        } finally {
            child.destroyForcibly();
        }
        assertThat(acknowledged).as("the child wrote until it was killed").hasSizeGreaterThanOrEqualTo(afterEntries);
        return acknowledged;
    }
}
