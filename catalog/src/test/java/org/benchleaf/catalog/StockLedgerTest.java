package org.benchleaf.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.benchleaf.catalog.Drafts.OCTOBER_GLORY;
import static org.benchleaf.catalog.Drafts.RED_MAPLE;
import static org.benchleaf.catalog.Drafts.lot;
import static org.benchleaf.catalog.Drafts.maples;
import static org.benchleaf.catalog.Drafts.plan;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.catalog.intake.LotDraft;
import org.benchleaf.catalog.ledger.Balance;
import org.benchleaf.catalog.ledger.LedgerEntry;
import org.benchleaf.catalog.ledger.LedgerLine;
import org.benchleaf.catalog.ledger.NewLot;
import org.benchleaf.catalog.ledger.StockEvent;
import org.benchleaf.catalog.model.ItemOutlook;
import org.benchleaf.catalog.model.LedgerKind;
import org.benchleaf.catalog.model.LotRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.shared.code.ItemKey;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.stock.Availability;
import org.benchleaf.shared.stock.Condition;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

@ParameterizedClass
@EnumSource(Engine.class)
class StockLedgerTest {
    private static final YearWeek THIS_WEEK = new YearWeek(2026, 48);

    @TempDir
    Path folder;

    private final Engine engine;
    private final TestClock clock = new TestClock("2026-11-25T15:00:00Z");
    private Catalog catalog;
    private ItemKey item;

    StockLedgerTest(Engine engine) {
        this.engine = engine;
    }

    @BeforeEach
    void makeCatalogWithFortyMaples() {
        catalog = engine.create(folder, clock);
        apply(lot("T0001", OCTOBER_GLORY, 40));
        PlantKey glory = catalog.names().byName(OCTOBER_GLORY).orElseThrow();
        item = new ItemKey(glory, 1);
    }

    @AfterEach
    void closeCatalog() {
        assertThat(catalog.check()).isEmpty();
        catalog.close();
    }

    private CatalogRevision apply(LotDraft... lots) {
        return catalog.apply(plan(catalog, ImportPlan.Rank.OWN, maples(), List.of(lots)));
    }

    private PlantStock stock() {
        return catalog.view().stock(List.of(item.plant())).values().iterator().next();
    }

    private LedgerResult record(String lot, StockEvent event, String key) {
        return catalog.ledger().record(LedgerEntry.of(lot, event, "Ruth", "order 114", key));
    }

    private static LedgerResult left(int count, int held) {
        return new LedgerResult.Applied(new Balance(count, held));
    }

    private static String refusal(LedgerResult result) {
        return ((LedgerResult.Refused) result).problem().key();
    }

    private Instant inHours(int hours) {
        return clock.instant().plus(Duration.ofHours(hours));
    }

    @Test
    void changesTheCountByWhatHappened() {
        assertThat(record("T0001", new StockEvent.Shipped(12), "a")).isEqualTo(left(28, 0));
        assertThat(record("T0001", new StockEvent.Received(2), "b")).isEqualTo(left(30, 0));
        assertThat(record("T0001", new StockEvent.Lost(1), "c")).isEqualTo(left(29, 0));
        assertThat(record("T0001", new StockEvent.Counted(26), "d")).isEqualTo(left(26, 0));
        assertThat(stock().lots()).extracting(LotRecord::count).containsExactly(26);
    }

    @Test
    void setsAsideWhatIsHeldWithoutTakingItOutOfTheCount() {
        assertThat(record("T0001", new StockEvent.Held(8, Optional.empty()), "green acres"))
                .isEqualTo(left(40, 8));
        assertThat(stock().lots())
                .extracting(LotRecord::count, LotRecord::held, LotRecord::free)
                .containsExactly(tuple(40, 8, 32));
        assertThat(stock().freeBy(item, THIS_WEEK)).isEqualTo(32);
        assertThat(stock().availability(item, THIS_WEEK)).isEqualTo(new Availability.InStock(32));
        assertThat(record("T0001", new StockEvent.Released(3, "green acres"), "b"))
                .isEqualTo(left(40, 5));
        assertThat(record("T0001", new StockEvent.Shipped(5, Optional.of("green acres")), "c"))
                .isEqualTo(left(35, 0));
        assertThat(catalog.ledger().hold("green acres"))
                .as("nothing is left of it")
                .isEmpty();
    }

    @Test
    void endsAHoldAtItsHourWithoutAnybodyEndingIt() {
        record("T0001", new StockEvent.Held(30, Optional.of(inHours(2))), "till five");
        record("T0001", new StockEvent.Held(4, Optional.empty()), "for good");
        assertThat(catalog.ledger().lot("T0001").orElseThrow().free()).isEqualTo(6);
        Instant before = catalog.view().now();
        assertThat(refusal(record("T0001", new StockEvent.Shipped(7), "a"))).isEqualTo("ledger.held");

        clock.pass(Duration.ofHours(2));

        assertThat(catalog.ledger().lot("T0001").orElseThrow().free()).isEqualTo(36);
        assertThat(catalog.ledger().holds("T0001"))
                .extracting(hold -> hold.key())
                .containsExactly("for good");
        assertThat(catalog.view().freedSince(before).plants()).containsExactly(item.plant());
        assertThat(catalog.view().freedSince(catalog.view().now()).plants()).isEmpty();
        assertThat(refusal(record("T0001", new StockEvent.Shipped(1, Optional.of("till five")), "b")))
                .isEqualTo("ledger.hold.ended");
        assertThat(record("T0001", new StockEvent.Shipped(36), "c")).isEqualTo(left(4, 4));
        assertThat(record("T0001", new StockEvent.Released(30, "till five"), "d"))
                .as("a telephone may have given it back in time")
                .isEqualTo(left(4, 4));
    }

    @Test
    void neverPromisesThePlantsOfAHoldToAnother() {
        record("T0001", new StockEvent.Held(35, Optional.empty()), "green acres");
        apply(lot("T0001", OCTOBER_GLORY, 40), lot("T0002", OCTOBER_GLORY, 1), lot("M1", RED_MAPLE, 3));
        assertThat(refusal(record("T0001", new StockEvent.Shipped(6), "a"))).isEqualTo("ledger.held");
        assertThat(refusal(record("T0001", new StockEvent.Held(6, Optional.empty()), "b")))
                .isEqualTo("ledger.held");
        assertThat(refusal(record("T0001", new StockEvent.Moved(6, "T0002"), "c")))
                .isEqualTo("ledger.held");
        assertThat(refusal(record("T0001", new StockEvent.Shipped(41), "d"))).isEqualTo("ledger.too.few");
        assertThat(refusal(record("T0001", new StockEvent.Released(36, "green acres"), "e")))
                .isEqualTo("ledger.hold.less");
        assertThat(refusal(record("T0002", new StockEvent.Released(1, "green acres"), "f")))
                .isEqualTo("ledger.hold.other.lot");
        assertThat(refusal(record("T0001", new StockEvent.Released(1, "nobody"), "g")))
                .isEqualTo("ledger.hold.unknown");
        assertThat(refusal(record("T0001", new StockEvent.Held(1, Optional.of(clock.instant())), "h")))
                .isEqualTo("ledger.hold.past");
        assertThat(record("T0001", new StockEvent.Shipped(5), "a")).isEqualTo(left(35, 35));
    }

    @Test
    void believesACountThatFindsFewerThanAreHeldAndPromisesNothing() {
        record("T0001", new StockEvent.Held(10, Optional.empty()), "green acres");
        assertThat(record("T0001", new StockEvent.Counted(4), "walk")).isEqualTo(left(4, 10));
        assertThat(stock().freeBy(item, THIS_WEEK)).isZero();
        assertThat(refusal(record("T0001", new StockEvent.Shipped(5, Optional.of("green acres")), "a")))
                .isEqualTo("ledger.too.few");
        assertThat(record("T0001", new StockEvent.Shipped(4, Optional.of("green acres")), "a"))
                .isEqualTo(left(0, 6));
    }

    @Test
    void wantsAReasonForACountThatDiffers() {
        LedgerEntry silent = LedgerEntry.of("T0001", new StockEvent.Counted(39), "Ruth", " ", "walk");
        assertThat(refusal(catalog.ledger().record(silent))).isEqualTo("ledger.reason");
        LedgerEntry confirming = LedgerEntry.of("T0001", new StockEvent.Counted(40), "Ruth", "", "walk");
        CatalogRevision before = catalog.view().revision();
        assertThat(catalog.ledger().record(confirming)).isEqualTo(left(40, 0));
        assertThat(catalog.view().revision()).as("nothing is different").isEqualTo(before);
        assertThat(catalog.ledger().record(confirming)).isEqualTo(new LedgerResult.AlreadyApplied(new Balance(40, 0)));
    }

    @Test
    void movesPlantsBetweenLotsOfOnePlant() {
        apply(lot("T0001", OCTOBER_GLORY, 40), lot("T0002", OCTOBER_GLORY, 1), lot("M1", RED_MAPLE, 3));
        assertThat(record("T0001", new StockEvent.Moved(9, "T0002"), "a")).isEqualTo(left(31, 0));
        assertThat(catalog.ledger().lot("T0002").orElseThrow().count()).isEqualTo(10);
        assertThat(catalog.ledger().history("T0002", 1))
                .extracting(LedgerLine::change, LedgerLine::otherLot, LedgerLine::key)
                .containsExactly(tuple(9, Optional.of("T0001"), Optional.empty()));
        assertThat(record("T0001", new StockEvent.Moved(9, "T0002"), "a"))
                .isEqualTo(new LedgerResult.AlreadyApplied(new Balance(31, 0)));
        assertThat(refusal(record("T0001", new StockEvent.Moved(1, "M1"), "b"))).isEqualTo("ledger.move.other.plant");
        assertThat(refusal(record("T0001", new StockEvent.Moved(1, "T0001"), "c")))
                .isEqualTo("ledger.move.same");
        assertThat(refusal(record("T0001", new StockEvent.Moved(1, "T0404"), "d")))
                .isEqualTo("ledger.lot.unknown");
    }

    @Test
    void knowsTheNewPlaceReadyWeekAndConditionOfALot() {
        record("T0001", new StockEvent.Placed("C1-3"), "a");
        record("T0001", new StockEvent.Ready(Optional.of(new YearWeek(2027, 14))), "b");
        record("T0001", new StockEvent.Seen(Set.of(Condition.IN_BUD), LocalDate.of(2026, 11, 24)), "c");
        record("T0001", new StockEvent.Seen(Set.of(Condition.CUT_BACK), LocalDate.of(2026, 11, 1)), "d");
        assertThat(catalog.ledger().lot("T0001"))
                .contains(new LotRecord(
                        "T0001",
                        item,
                        "C1-3",
                        Optional.of(new YearWeek(2027, 14)),
                        40,
                        Set.of(Condition.IN_BUD),
                        Optional.of(LocalDate.of(2026, 11, 24))));
        assertThat(catalog.ledger().history("T0001", 9))
                .extracting(LedgerLine::kind, LedgerLine::detail)
                .as("an older look is written down and changes nothing")
                .containsExactly(
                        tuple(LedgerKind.COUNTED, ""),
                        tuple(LedgerKind.MOVED, "C1-3"),
                        tuple(LedgerKind.READY, "2027-W14"),
                        tuple(LedgerKind.SEEN, "2026-11-24 in bud"),
                        tuple(LedgerKind.SEEN, "2026-11-01 cut back"));
        assertThat(refusal(record("T0001", new StockEvent.Seen(Set.of(), LocalDate.of(2026, 11, 1)), "e")))
                .isEqualTo("ledger.seen.nothing");
    }

    @Test
    void saysWhatIsFreeNowWhatComesOnAndHowItLookedLast() {
        record("T0001", new StockEvent.Held(15, Optional.empty()), "green acres");
        record("T0001", new StockEvent.Seen(Set.of(Condition.FULL), LocalDate.of(2026, 11, 20)), "a");
        begin("S1", 60, new YearWeek(2027, 14), "b");
        begin("S2", 20, new YearWeek(2027, 14), "c");
        begin("S3", 5, new YearWeek(2027, 20), "d");
        record("S1", new StockEvent.Held(10, Optional.empty()), "early bird");

        ItemOutlook outlook = stock().outlook(item, THIS_WEEK);

        assertThat(outlook.count()).isEqualTo(40);
        assertThat(outlook.held()).isEqualTo(15);
        assertThat(outlook.free()).isEqualTo(25);
        assertThat(outlook.coming())
                .containsExactly(
                        new ItemOutlook.Coming(new YearWeek(2027, 14), 70, 95),
                        new ItemOutlook.Coming(new YearWeek(2027, 20), 5, 100));
        assertThat(outlook.seen())
                .contains(new ItemOutlook.LastSeen(LocalDate.of(2026, 11, 20), "T0001", Set.of(Condition.FULL)));
    }

    private LedgerResult begin(String lot, int quantity, YearWeek ready, String key) {
        return record(
                lot, new StockEvent.Received(quantity, Optional.of(new NewLot(item, "H2-1", Optional.of(ready)))), key);
    }

    @Test
    void beginsALotWithWhatIsReceived() {
        assertThat(begin("S1", 60, new YearWeek(2027, 14), "a")).isEqualTo(left(60, 0));
        assertThat(begin("S1", 60, new YearWeek(2027, 14), "a"))
                .isEqualTo(new LedgerResult.AlreadyApplied(new Balance(60, 0)));
        assertThat(refusal(begin("S1", 60, new YearWeek(2027, 14), "b"))).isEqualTo("ledger.lot.exists");
        NewLot nowhere = new NewLot(new ItemKey(item.plant(), 77), "", Optional.empty());
        assertThat(refusal(record("S2", new StockEvent.Received(1, Optional.of(nowhere)), "c")))
                .isEqualTo("ledger.item.unknown");
    }

    @Test
    void countsAnEntryOnceHoweverOftenItArrives() {
        CatalogRevision before = catalog.view().revision();
        record("T0001", new StockEvent.Shipped(12), "telephone-7");
        assertThat(record("T0001", new StockEvent.Shipped(12), "telephone-7"))
                .isEqualTo(new LedgerResult.AlreadyApplied(new Balance(28, 0)));
        assertThat(catalog.view().revision().number()).isEqualTo(before.number() + 1);
    }

    @Test
    void refusesAnEntryWhoseKeyWasUsedForAnother() {
        record("T0001", new StockEvent.Shipped(12), "telephone-7");
        assertThat(refusal(record("T0001", new StockEvent.Shipped(13), "telephone-7")))
                .isEqualTo("ledger.key.reused");
        assertThat(stock().lots()).extracting(LotRecord::count).containsExactly(28);
    }

    @Test
    void neverLetsACountFallBelowZero() {
        assertThat(record("T0001", new StockEvent.Shipped(41), "a"))
                .isInstanceOfSatisfying(LedgerResult.Refused.class, refused -> {
                    assertThat(refused.problem().key()).isEqualTo("ledger.too.few");
                    assertThat(refused.problem().details()).containsEntry("count", "40");
                });
        assertThat(refusal(record("T0001", new StockEvent.Lost(41), "b"))).isEqualTo("ledger.too.few");
        assertThat(record("T0001", new StockEvent.Shipped(40), "a"))
                .as("a refused entry leaves its key free")
                .isEqualTo(left(0, 0));
    }

    @Test
    void refusesUnknownLotsImpossibleNumbersAndTheFuture() {
        assertThat(List.of(
                        record("T0404", new StockEvent.Shipped(1), "a"),
                        record("T0001", new StockEvent.Shipped(0), "b"),
                        record("T0001", new StockEvent.Received(-3), "c"),
                        record("T0001", new StockEvent.Counted(-1), "d"),
                        record("T0001", new StockEvent.Moved(0, "T0002"), "e"),
                        record("T0001", new StockEvent.Received(Integer.MAX_VALUE), "f"),
                        record("T0001", new StockEvent.Received(LedgerKind.MOST), "g"),
                        catalog.ledger()
                                .record(new LedgerEntry(
                                        "T0001", new StockEvent.Shipped(1), "Ruth", "", "h", Optional.of(inHours(1))))))
                .extracting(StockLedgerTest::refusal)
                .containsExactly(
                        "ledger.lot.unknown",
                        "ledger.quantity",
                        "ledger.quantity",
                        "ledger.quantity",
                        "ledger.quantity",
                        "ledger.quantity",
                        "ledger.too.many",
                        "ledger.future");
        assertThatThrownBy(() -> LedgerEntry.of("T0001", new StockEvent.Shipped(1), "", "", "k"))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void tellsTheHistoryOfALotWithWhoWhenAndWhy() {
        Instant yesterday = clock.instant().minus(Duration.ofDays(1));
        catalog.ledger()
                .record(new LedgerEntry(
                        "T0001",
                        new StockEvent.Shipped(12),
                        "Ruth",
                        "order 114",
                        "telephone-7",
                        Optional.of(yesterday)));
        record("T0001", new StockEvent.Held(8, Optional.of(inHours(4))), "green acres");
        List<LedgerLine> lines = catalog.ledger().history("T0001", 2);
        assertThat(lines)
                .extracting(LedgerLine::kind, LedgerLine::change, LedgerLine::count, LedgerLine::who, LedgerLine::why)
                .containsExactly(
                        tuple(LedgerKind.SHIPPED, -12, 28, "Ruth", "order 114"),
                        tuple(LedgerKind.HELD, 0, 28, "Ruth", "order 114"));
        assertThat(lines.getFirst().happenedAt()).isEqualTo(yesterday);
        assertThat(lines.getFirst().enteredAt()).isEqualTo(clock.instant());
        assertThat(lines.getLast().until()).contains(inHours(4));
    }

    @Test
    void leavesAPlanInForceWhileOnlyOtherLotsMove() {
        apply(lot("T0001", OCTOBER_GLORY, 40), lot("T0002", OCTOBER_GLORY, 12));
        ImportPlan plan = plan(catalog, ImportPlan.Rank.OWN, List.of(), List.of(lot("T0002", OCTOBER_GLORY, 11)));
        record("T0001", new StockEvent.Shipped(5), "a");
        record("T0002", new StockEvent.Held(2, Optional.empty()), "b");
        catalog.apply(plan);
        assertThat(stock().lots()).extracting(LotRecord::count).containsExactly(35, 11);
    }

    @Test
    void refusesAPlanOfWhichALotHasMovedSince() {
        ImportPlan plan = plan(catalog, ImportPlan.Rank.OWN, List.of(), List.of(lot("T0001", OCTOBER_GLORY, 38)));
        record("T0001", new StockEvent.Shipped(5), "a");
        assertThatThrownBy(() -> catalog.apply(plan)).isInstanceOfSatisfying(ImportRefused.class, refused -> {
            assertThat(refused.problem().key()).isEqualTo("import.stale.lots");
            assertThat(refused.problem().details()).containsEntry("lots", "T0001");
        });
        assertThat(stock().lots()).extracting(LotRecord::count).containsExactly(35);
    }

    @Test
    void writesEntriesThatBelongTogetherAllOrNone() {
        apply(lot("T0001", OCTOBER_GLORY, 40), lot("T0002", OCTOBER_GLORY, 5));
        LedgerEntry first = LedgerEntry.of("T0001", new StockEvent.Held(40, Optional.empty()), "Ann", "", "p-1");
        LedgerEntry tooMany = LedgerEntry.of("T0002", new StockEvent.Held(6, Optional.empty()), "Ann", "", "p-2");
        LedgerEntry second = LedgerEntry.of("T0002", new StockEvent.Held(5, Optional.empty()), "Ann", "", "p-2");

        assertThat(catalog.ledger().recordTogether(List.of(first, tooMany)))
                .last()
                .isInstanceOf(LedgerResult.Refused.class);
        assertThat(stock().outlook(item, THIS_WEEK).held()).isZero();

        assertThat(catalog.ledger().recordTogether(List.of(first, second)))
                .allMatch(LedgerResult.Applied.class::isInstance);
        assertThat(stock().outlook(item, THIS_WEEK).free()).isZero();
        assertThat(catalog.ledger().recordTogether(List.of(first, second)))
                .as("sent again")
                .allMatch(LedgerResult.AlreadyApplied.class::isInstance);
    }
}
