package org.benchleaf.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.benchleaf.catalog.Drafts.OCTOBER_GLORY;
import static org.benchleaf.catalog.Drafts.RED_MAPLE;
import static org.benchleaf.catalog.Drafts.lot;
import static org.benchleaf.catalog.Drafts.maples;

import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.catalog.ledger.LedgerEntry;
import org.benchleaf.catalog.ledger.LedgerLine;
import org.benchleaf.catalog.ledger.StockEvent;
import org.benchleaf.catalog.model.LedgerKind;
import org.benchleaf.catalog.walk.NotedSighting;
import org.benchleaf.catalog.walk.Settlement;
import org.benchleaf.catalog.walk.Sighting;
import org.benchleaf.catalog.walk.Standing;
import org.benchleaf.catalog.walk.Walk;
import org.benchleaf.shared.Reading;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.stock.Condition;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

@ParameterizedClass
@EnumSource(Engine.class)
class CropWalksTest {
    private static final Instant SEEN = Instant.parse("2026-11-18T11:10:00Z");
    private static final Walk WALK = new Walk("walk-0001", "Ann", Instant.parse("2026-11-18T11:00:00Z"));

    private final Engine engine;

    @TempDir
    Path folder;

    private final TestClock clock = new TestClock("2026-11-18T09:00:00Z");
    private Catalog catalog;
    private PlantKey glory;

    CropWalksTest(Engine engine) {
        this.engine = engine;
    }

    @BeforeEach
    void makeCatalogWithFortyMaples() {
        catalog = engine.create(folder, clock);
        catalog.apply(Drafts.plan(
                catalog,
                ImportPlan.Rank.OWN,
                maples(),
                List.of(lot("T0001", OCTOBER_GLORY, 40), lot("T0002", OCTOBER_GLORY, 7), lot("T0003", RED_MAPLE, 5))));
        glory = catalog.names().byName(OCTOBER_GLORY).orElseThrow();
        clock.pass(Duration.ofHours(4)); // the walk is at 11, it is sent at 13
    }

    @AfterEach
    void closeCatalog() {
        assertThat(catalog.check()).isEmpty();
        catalog.close();
    }

    private Sighting sighting(String key, Optional<String> lot, Optional<Integer> count, Condition... conditions) {
        return new Sighting(
                key,
                WALK,
                glory,
                Optional.of(1),
                lot,
                "B4-12",
                Set.of(conditions),
                Optional.of(180),
                count,
                Optional.empty(),
                "best row",
                SEEN);
    }

    private Sighting counted(String key, int count) {
        return sighting(key, Optional.of("T0001"), Optional.of(count));
    }

    private NotedSighting note(Sighting sighting) {
        return catalog.walks().note(sighting).orThrow();
    }

    private static String problem(NotedSighting noted) {
        return noted.standing() instanceof Standing.InConflict(var problem) ? problem.key() : "none";
    }

    private int count(String lot) {
        return catalog.ledger().lot(lot).orElseThrow().count();
    }

    private void ledger(String key, StockEvent event, Instant at) {
        assertThat(catalog.ledger().record(new LedgerEntry("T0001", event, "Bob", "recount", key, Optional.of(at))))
                .isInstanceOf(LedgerResult.Applied.class);
    }

    @Test
    void whatWasSeenIsWrittenIntoTheLedgerWithWhoWhenAndWhy() {
        NotedSighting noted = note(sighting(
                "sighting-1", Optional.of("T0001"), Optional.of(38), Condition.FULL_FALL_COLOR, Condition.HEAVY));

        assertThat(noted.standing()).isEqualTo(new Standing.Noted());
        var lot = catalog.ledger().lot("T0001").orElseThrow();
        assertThat(lot.count()).isEqualTo(38);
        assertThat(lot.conditions()).containsExactlyInAnyOrder(Condition.FULL_FALL_COLOR, Condition.HEAVY);
        assertThat(lot.seenOn()).contains(LocalDate.of(2026, 11, 18));
        assertThat(catalog.ledger().history("T0001", 2))
                .extracting(LedgerLine::kind, LedgerLine::who, LedgerLine::why, LedgerLine::happenedAt)
                .containsExactly(
                        org.assertj.core.api.Assertions.tuple(LedgerKind.SEEN, "Ann", "crop walk: best row", SEEN),
                        org.assertj.core.api.Assertions.tuple(LedgerKind.COUNTED, "Ann", "crop walk: best row", SEEN));
    }

    @Test
    void aSightingReadBackSaysWhatWasSent() {
        Sighting sent = sighting("sighting-1", Optional.of("T0001"), Optional.of(38), Condition.IN_BUD);
        note(sent);

        assertThat(catalog.walks().seenOn(WALK.key()))
                .extracting(NotedSighting::sighting)
                .containsExactly(sent);
        assertThat(catalog.walks().walks(5)).containsExactly(WALK);
        assertThat(catalog.walks().seenSince(SEEN, 5)).hasSize(1);
        assertThat(catalog.walks().seenSince(SEEN.plusSeconds(1), 5)).isEmpty();
    }

    @Test
    void sentAgainItCountsOnce() {
        note(counted("sighting-1", 38));
        ledger("later", new StockEvent.Shipped(8), clock.instant());

        NotedSighting again = note(counted("sighting-1", 38));

        assertThat(again.standing()).isEqualTo(new Standing.Noted());
        assertThat(count("T0001")).isEqualTo(30);
        assertThat(catalog.walks().seenOn(WALK.key())).hasSize(1);
    }

    @Test
    void sentManyTimesAtOnceItCountsOnce() throws Exception {
        Callable<NotedSighting> send = () -> note(counted("sighting-1", 38));
        try (ExecutorService senders = Executors.newFixedThreadPool(8)) {
            for (var sent : senders.invokeAll(java.util.Collections.nCopies(16, send))) {
                assertThat(sent.get().standing()).isEqualTo(new Standing.Noted());
            }
        }
        assertThat(catalog.ledger().history("T0001", 9))
                .filteredOn(line -> line.who().equals("Ann"))
                .hasSize(1);
    }

    @Test
    void anotherSightingUnderTheSameKeyIsRefused() {
        note(counted("sighting-1", 38));

        Reading<NotedSighting> other = catalog.walks().note(counted("sighting-1", 12));

        assertThat(other.refusal().orElseThrow().key()).isEqualTo("walk.key.reused");
        assertThat(count("T0001")).isEqualTo(38);
    }

    @Test
    void plantsThatWereShippedAfterItWasSeenAreGoneFromItsCount() {
        ledger("order-1", new StockEvent.Shipped(10), SEEN.plusSeconds(600));

        note(counted("sighting-1", 38));

        assertThat(count("T0001")).isEqualTo(28);
    }

    @Test
    void aCountAfterItWasSeenIsAConflictAndStandsUntilSomebodyDecides() {
        ledger("recount", new StockEvent.Counted(35), SEEN.plusSeconds(600));

        NotedSighting noted =
                note(sighting("sighting-1", Optional.of("T0001"), Optional.of(38), Condition.FULL_FALL_COLOR));

        assertThat(problem(noted)).isEqualTo("walk.count.later");
        assertThat(count("T0001")).isEqualTo(35);
        assertThat(catalog.ledger().lot("T0001").orElseThrow().conditions())
                .containsExactly(Condition.FALL_COLOR_STARTING);
        assertThat(catalog.walks().conflicts()).hasSize(1);

        NotedSighting settled = catalog.walks()
                .settle("sighting-1", new Settlement.AsSeen(), "Eve")
                .orThrow();

        assertThat(settled.standing()).isInstanceOfSatisfying(Standing.Settled.class, how -> {
            assertThat(how.how()).isEqualTo(Standing.Decision.AS_SEEN);
            assertThat(how.who()).isEqualTo("Eve");
            assertThat(how.was().key()).isEqualTo("walk.count.later");
        });
        assertThat(count("T0001")).isEqualTo(38);
        assertThat(catalog.walks().conflicts()).isEmpty();
    }

    @Test
    void aCountBelowWhatIsHeldIsAConflict() {
        ledger("green-114", new StockEvent.Held(20, Optional.empty()), SEEN.minusSeconds(600));

        assertThat(problem(note(counted("sighting-1", 12)))).isEqualTo("walk.count.held");
        assertThat(count("T0001")).isEqualTo(40);

        catalog.walks().settle("sighting-1", new Settlement.NoteOnly(), "Eve");

        assertThat(count("T0001")).isEqualTo(40);
        assertThat(catalog.walks().sighting("sighting-1").orElseThrow().standing())
                .isInstanceOf(Standing.Settled.class);
    }

    @Test
    void whoLookedLaterTheSameDayKnowsBetter() {
        note(new Sighting(
                "sighting-2",
                WALK,
                glory,
                Optional.empty(),
                Optional.of("T0001"),
                "",
                Set.of(Condition.FOLIAGE_FINISHED),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "",
                SEEN.plusSeconds(60)));

        NotedSighting earlier =
                note(sighting("sighting-1", Optional.of("T0001"), Optional.empty(), Condition.FULL_FALL_COLOR));

        assertThat(problem(earlier)).isEqualTo("walk.seen.later");
        assertThat(catalog.ledger().lot("T0001").orElseThrow().conditions())
                .containsExactly(Condition.FOLIAGE_FINISHED);
    }

    @Test
    void aLookOnAnEarlierDayThanTheLastIsHistoryAndNoConflict() {
        catalog.apply(Drafts.plan(
                catalog,
                ImportPlan.Rank.OWN,
                List.of(),
                List.of(lot("T0004", OCTOBER_GLORY, 3)))); // seen on 12 November
        Sighting earlier = new Sighting(
                "sighting-1",
                WALK,
                glory,
                Optional.empty(),
                Optional.of("T0004"),
                "",
                Set.of(Condition.IN_BUD),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "",
                Instant.parse("2026-11-11T11:00:00Z"));

        assertThat(problem(note(earlier))).isEqualTo("none");
        assertThat(catalog.ledger().lot("T0004").orElseThrow().conditions())
                .containsExactly(Condition.FALL_COLOR_STARTING);
        assertThat(catalog.ledger().history("T0004", 1))
                .extracting(LedgerLine::kind)
                .containsExactly(LedgerKind.SEEN);
    }

    @Test
    void aLotThatIsNotThereIsAConflictUntilItIsToldWhichOneItWas() {
        NotedSighting noted = note(sighting("sighting-1", Optional.of("T9999"), Optional.of(6), Condition.IN_BUD));
        assertThat(problem(noted)).isEqualTo("walk.lot.unknown");

        NotedSighting wrong = catalog.walks()
                .settle("sighting-1", new Settlement.AtLot("T0003"), "Eve")
                .orThrow();
        assertThat(problem(wrong)).isEqualTo("walk.lot.other.plant");
        assertThat(count("T0003")).isEqualTo(5);

        NotedSighting settled = catalog.walks()
                .settle("sighting-1", new Settlement.AtLot("T0002"), "Eve")
                .orThrow();
        assertThat(settled.sighting().lot()).contains("T0002");
        assertThat(count("T0002")).isEqualTo(6);
        assertThat(note(sighting("sighting-1", Optional.of("T9999"), Optional.of(6), Condition.IN_BUD)))
                .as("the telephone did not hear the answer and sends it again")
                .isEqualTo(settled);
    }

    @Test
    void aCountNeedsALotAndALookDoesNot() {
        assertThat(problem(note(sighting("sighting-1", Optional.empty(), Optional.of(6)))))
                .isEqualTo("walk.lot.missing");
        assertThat(problem(note(sighting("sighting-2", Optional.empty(), Optional.empty(), Condition.IN_BUD))))
                .isEqualTo("none");
    }

    @Test
    void aRetiredPlantAndOneNobodyKnowsAreConflicts() throws SQLException {
        engine.sql(folder, "UPDATE plant SET retired = 1 WHERE name = 'Acer rubrum ''October Glory'''");
        Sighting unknown = new Sighting(
                "sighting-2",
                WALK,
                PlantKey.ofSerial(4711),
                Optional.empty(),
                Optional.empty(),
                "",
                Set.of(Condition.IN_BUD),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "",
                SEEN);

        assertThat(problem(note(counted("sighting-1", 6)))).isEqualTo("walk.plant.retired");
        assertThat(problem(note(unknown))).isEqualTo("walk.plant.unknown");
        assertThat(catalog.walks().conflicts()).hasSize(2);
    }

    @Test
    void aTelephoneWhoseClockIsAheadLosesNothing() {
        Sighting ahead = new Sighting(
                "sighting-1",
                WALK,
                glory,
                Optional.empty(),
                Optional.of("T0001"),
                "",
                Set.of(),
                Optional.empty(),
                Optional.of(33),
                Optional.empty(),
                "",
                Instant.parse("2027-10-07T11:00:00Z"));

        assertThat(problem(note(ahead))).isEqualTo("walk.future");
        catalog.walks().settle("sighting-1", new Settlement.AsSeen(), "Eve");

        assertThat(count("T0001")).isEqualTo(33);
    }

    @Test
    void nothingSeenAndNumbersNobodySeesAreRefused() {
        Sighting nothing = new Sighting(
                "sighting-1",
                WALK,
                glory,
                Optional.empty(),
                Optional.empty(),
                "",
                Set.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                " ",
                SEEN);

        assertThat(catalog.walks().note(nothing).refusal().orElseThrow().key()).isEqualTo("walk.nothing.seen");
        assertThat(catalog.walks()
                        .note(counted("sighting-2", -1))
                        .refusal()
                        .orElseThrow()
                        .key())
                .isEqualTo("walk.count");
    }

    @Test
    void isThereAgainWhenTheCatalogIsOpenedAnew() {
        ledger("recount", new StockEvent.Counted(35), SEEN.plusSeconds(600));
        NotedSighting noted = note(counted("sighting-1", 38));
        catalog.close();
        catalog = engine.open(folder);

        assertThat(catalog.walks().conflicts()).containsExactly(noted);
    }
}
