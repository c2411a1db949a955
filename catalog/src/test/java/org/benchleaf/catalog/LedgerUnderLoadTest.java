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
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.catalog.model.LedgerKind;
import org.benchleaf.catalog.model.LotRecord;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.name.BotanicalName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LedgerUnderLoadTest {
    private static final int WRITERS = 8;
    private static final int ENTRIES = 25;

    @TempDir
    Path folder;

    private static int count(Catalog catalog) {
        PlantKey maple = catalog.names().byName(RED_MAPLE).orElseThrow();
        return catalog.view().stock(List.of(maple)).values().stream()
                .flatMap(stock -> stock.lots().stream())
                .mapToInt(LotRecord::count)
                .sum();
    }

    @Test
    void losesNothingAmongEightWritersAndNeverSellsMoreThanThereIs() throws Exception {
        try (Catalog catalog = Catalog.create(folder.resolve("catalog.db"));
                ExecutorService threads = Executors.newFixedThreadPool(WRITERS)) {
            int enoughForHalf = WRITERS * ENTRIES / 2;
            catalog.apply(
                    plan(catalog, ImportPlan.Rank.OWN, maples(), List.of(lot("T0001", RED_MAPLE, enoughForHalf))));
            List<Callable<Long>> sellers = new ArrayList<>();
            for (int writer = 0; writer < WRITERS; writer++) {
                String name = "seller-" + writer;
                sellers.add(() -> sell(catalog, name));
            }
            long sold = sum(threads.invokeAll(sellers));
            assertThat(sold).isEqualTo(enoughForHalf);
            assertThat(count(catalog)).isZero();
            assertThat(catalog.check()).isEmpty();
        }
    }

    private static long sell(Catalog catalog, String seller) {
        long sold = 0;
        for (int entry = 0; entry < ENTRIES; entry++) {
            LedgerResult result =
                    catalog.ledger().record("T0001", LedgerKind.SHIPPED, 1, seller, "", seller + "-" + entry);
            sold += result instanceof LedgerResult.Applied ? 1 : 0;
        }
        return sold;
    }

    private static long sum(List<Future<Long>> futures) throws InterruptedException, ExecutionException {
        long sum = 0;
        for (Future<Long> future : futures) {
            sum += future.get();
        }
        return sum;
    }

    /// The program is killed with SIGKILL in the middle of writing, a few times; what it had
    /// acknowledged is there once.
    @Test
    void keepsEveryAcknowledgedEntryOnceWhenTheProgramIsKilled() throws Exception {
        Path file = folder.resolve("catalog.db");
        try (Catalog catalog = Catalog.create(file)) {
            catalog.apply(plan(catalog, ImportPlan.Rank.OWN, maples(), List.of(lot("T0001", RED_MAPLE, 0))));
        }
        int entriesKnown = 0;
        for (int round = 0; round < 3; round++) {
            List<String> acknowledged = killedWhileWriting(file, "round-" + round, 20 + 15 * round);
            try (Catalog catalog = Catalog.open(file)) {
                assertThat(catalog.check()).isEmpty();
                int count = count(catalog);
                assertThat(count)
                        .as("what was acknowledged, and at most the one entry under way")
                        .isBetween(entriesKnown + acknowledged.size(), entriesKnown + acknowledged.size() + 1);
                for (String key : acknowledged) {
                    assertThat(catalog.ledger().record("T0001", LedgerKind.RECEIVED, 1, "child", "", key))
                            .isEqualTo(new LedgerResult.AlreadyApplied(count));
                }
                long plants = plantsOfImports(catalog);
                assertThat(plants % LedgerWriter.PLANTS_OF_AN_IMPORT)
                        .as("an import is there as a whole or not at all")
                        .isZero();
                entriesKnown = count;
            }
        }
        assertThat(entriesKnown).isPositive();
    }

    private static long plantsOfImports(Catalog catalog) {
        List<BotanicalName> names = new ArrayList<>();
        catalog.view().forEachPlant(plant -> names.add(plant.name()));
        return names.stream().filter(name -> name.genus().equals("Itea")).count();
    }

    private static List<String> killedWhileWriting(Path file, String prefix, int afterEntries) throws IOException {
        Process child = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "--enable-native-access=ALL-UNNAMED",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                        LedgerWriter.class.getName(),
                        file.toString(),
                        prefix)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        List<String> acknowledged = new ArrayList<>();
        try (BufferedReader lines =
                new BufferedReader(new InputStreamReader(child.getInputStream(), StandardCharsets.UTF_8))) {
            String line = lines.readLine();
            while (line != null) {
                acknowledged.add(line);
                if (acknowledged.size() == afterEntries) {
                    child.toHandle().destroyForcibly(); // the handle: the process would throw unread lines away
                }
                line = lines.readLine();
            }
        } finally {
            child.destroyForcibly();
        }
        assertThat(acknowledged).as("the child wrote until it was killed").hasSizeGreaterThanOrEqualTo(afterEntries);
        return acknowledged;
    }
}
