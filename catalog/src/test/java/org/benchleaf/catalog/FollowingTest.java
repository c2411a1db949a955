package org.benchleaf.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.benchleaf.catalog.Drafts.OCTOBER_GLORY;
import static org.benchleaf.catalog.Drafts.RED_MAPLE;
import static org.benchleaf.catalog.Drafts.lot;
import static org.benchleaf.catalog.Drafts.maples;
import static org.benchleaf.catalog.Drafts.plan;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.catalog.ledger.LedgerEntry;
import org.benchleaf.catalog.ledger.StockEvent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

@ParameterizedClass
@EnumSource(Engine.class)
class FollowingTest {
    /// How long a test waits for news before it fails. How soon they come is measured: `bench/run ledger`.
    private static final long PATIENCE = 30;

    @TempDir
    Path folder;

    private final Engine engine;
    private Catalog here;
    private Catalog there;

    FollowingTest(Engine engine) {
        this.engine = engine;
    }

    @BeforeEach
    void openTwice() {
        here = engine.create(folder);
        here.apply(plan(here, ImportPlan.Rank.OWN, maples(), List.of(lot("T0001", OCTOBER_GLORY, 40))));
        there = engine.open(folder);
    }

    @AfterEach
    void closeBoth() {
        here.close();
        there.close();
    }

    private static LedgerResult ship(Catalog catalog, String key) {
        return catalog.ledger().record(LedgerEntry.of("T0001", new StockEvent.Shipped(1), "Ruth", "", key));
    }

    @Test
    void tellsWhatAnotherProgramChanged() throws InterruptedException {
        BlockingQueue<CatalogRevision> told = new LinkedBlockingQueue<>();
        try (Catalog.Following following = there.follow(told::add)) {
            CatalogRevision before = there.view().revision();
            ship(here, "a");
            assertThat(told.poll(PATIENCE, TimeUnit.SECONDS))
                    .isEqualTo(here.view().revision());
            assertThat(there.view().changesSince(before))
                    .extracting(CatalogView.Change::kind)
                    .containsExactly(CatalogView.Change.Kind.STOCK);
            there.apply(plan(there, ImportPlan.Rank.OWN, List.of(), List.of(lot("T0002", RED_MAPLE, 3))));
            assertThat(told.poll(PATIENCE, TimeUnit.SECONDS))
                    .as("its own changes too")
                    .isEqualTo(there.view().revision());
        }
        ship(here, "b");
        assertThat(told.poll(600, TimeUnit.MILLISECONDS)).as("closed").isNull();
    }

    @Test
    void followsAnotherProcessUntilItIsKilledAndKnowsTheLastOfIt() throws Exception {
        here.apply(plan(
                here,
                ImportPlan.Rank.OWN,
                List.of(),
                RandomEvents.lots().stream()
                        .map(number -> lot(number, OCTOBER_GLORY, 50))
                        .toList()));
        BlockingQueue<CatalogRevision> told = new LinkedBlockingQueue<>();
        Process child = LedgerWriter.start(engine.location(folder), "child", 5);
        try (Catalog.Following following = there.follow(told::add);
                BufferedReader lines =
                        new BufferedReader(new InputStreamReader(child.getInputStream(), StandardCharsets.UTF_8))) {
            for (int line = 0; line < 50; line++) {
                assertThat(lines.readLine()).isNotNull();
            }
            child.toHandle().destroyForcibly();
            child.waitFor();
            CatalogRevision last = here.view().revision();
            CatalogRevision newest = told.take();
            while (!newest.equals(last)) {
                CatalogRevision next = told.poll(PATIENCE, TimeUnit.SECONDS);
                assertThat(next).as("the news after " + newest).isNotNull().isGreaterThan(newest);
                newest = java.util.Objects.requireNonNull(next);
            }
        } finally {
            child.destroyForcibly();
        }
    }

    @Test
    void goesOnAfterAFollowerThatStumbles() throws InterruptedException {
        BlockingQueue<CatalogRevision> told = new LinkedBlockingQueue<>();
        AtomicBoolean first = new AtomicBoolean(true);
        try (Catalog.Following following = there.follow(revision -> {
            told.add(revision);
            if (first.getAndSet(false)) {
                throw new IllegalStateException("stumbled, as a test wants it to");
            }
        })) {
            ship(here, "a");
            assertThat(told.poll(PATIENCE, TimeUnit.SECONDS)).isNotNull();
            assertThat(told.poll(PATIENCE, TimeUnit.SECONDS))
                    .as("the same state once more, for it was not taken in")
                    .isEqualTo(here.view().revision());
        }
    }

    @Test
    void outlivesConnectionsThatWereCut() throws InterruptedException, SQLException {
        Assumptions.assumeTrue(engine == Engine.POSTGRESQL, "a file has no connection to cut");
        BlockingQueue<CatalogRevision> told = new LinkedBlockingQueue<>();
        try (Catalog.Following following = there.follow(told::add)) {
            for (int round = 0; round < 3; round++) {
                ship(here, "before-" + round);
                assertThat(told.poll(PATIENCE, TimeUnit.SECONDS)).isNotNull();
                assertThat(TestPostgres.cutConnections()).isPositive();
                assertThat(ship(here, "after-" + round)).isInstanceOf(LedgerResult.Applied.class);
                assertThat(told.poll(PATIENCE, TimeUnit.SECONDS))
                        .isEqualTo(here.view().revision());
                Thread.sleep(60); // until idle connections are looked at before they are used
                assertThat(there.ledger().lot("T0001").orElseThrow().count()).isEqualTo(38 - 2 * round);
            }
        }
    }
}
