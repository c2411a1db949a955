package org.benchleaf.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.benchleaf.catalog.Drafts.OCTOBER_GLORY;
import static org.benchleaf.catalog.Drafts.RED_MAPLE;
import static org.benchleaf.catalog.Drafts.alsoKnownAs;
import static org.benchleaf.catalog.Drafts.called;
import static org.benchleaf.catalog.Drafts.fact;
import static org.benchleaf.catalog.Drafts.inSize;
import static org.benchleaf.catalog.Drafts.keyed;
import static org.benchleaf.catalog.Drafts.lot;
import static org.benchleaf.catalog.Drafts.maples;
import static org.benchleaf.catalog.Drafts.plan;
import static org.benchleaf.catalog.Drafts.plant;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.catalog.intake.LotDraft;
import org.benchleaf.catalog.intake.PlantDraft;
import org.benchleaf.catalog.ledger.LedgerEntry;
import org.benchleaf.catalog.ledger.StockEvent;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.name.BotanicalName;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

@ParameterizedClass
@EnumSource(Engine.class)
class CatalogUndoTest {
    private static final BotanicalName ITEA = BotanicalName.ofSpecies("Itea", "virginica");

    @TempDir
    Path folder;

    private final Engine engine;

    CatalogUndoTest(Engine engine) {
        this.engine = engine;
    }

    private Catalog catalog;

    @BeforeEach
    void makeCatalog() {
        catalog = engine.create(folder);
    }

    @AfterEach
    void closeCatalog() {
        assertThat(catalog.check()).isEmpty();
        catalog.close();
    }

    private CatalogRevision apply(ImportPlan.Rank rank, List<PlantDraft> plants, List<LotDraft> lots) {
        return catalog.apply(plan(catalog, rank, plants, lots));
    }

    private CatalogRevision apply(PlantDraft... plants) {
        return apply(ImportPlan.Rank.OWN, List.of(plants), List.of());
    }

    private CatalogRevision stock(LotDraft... lots) {
        return apply(ImportPlan.Rank.OWN, List.of(), List.of(lots));
    }

    /// Everything that can be seen of the catalog.
    private List<Object> all() {
        List<Object> all = new ArrayList<>();
        catalog.view().forEachPlant(all::add);
        catalog.view().forEachStock(all::add);
        return all;
    }

    private PlantRecord named(BotanicalName name) {
        return catalog.names().byName(name).flatMap(catalog.view()::plant).orElseThrow();
    }

    private PlantStock stockOf(BotanicalName name) {
        PlantKey key = named(name).key();
        return Objects.requireNonNull(catalog.view().stock(List.of(key)).get(key));
    }

    private void refused(String key) {
        List<Object> before = all();
        CatalogRevision revision = catalog.view().revision();
        assertThatThrownBy(catalog::undo)
                .isInstanceOfSatisfying(
                        ImportRefused.class,
                        refused -> assertThat(refused.problem().key()).isEqualTo(key));
        assertThat(all()).isEqualTo(before);
        assertThat(catalog.view().revision()).isEqualTo(revision);
    }

    @Test
    void takesBackAllThatAnImportBrought() {
        apply(ImportPlan.Rank.OWN, maples(), List.of(lot("T1", OCTOBER_GLORY, 40)));
        UndoneImport undone = catalog.undo();
        assertThat(all()).isEmpty();
        assertThat(undone.plantsTakenOut()).isEqualTo(2);
        assertThat(undone.lotsTakenOut()).isEqualTo(1);
        assertThat(undone.revision()).isEqualTo(new CatalogRevision(2));
        assertThat(catalog.names().byName(RED_MAPLE)).isEmpty();
        assertThat(catalog.names().hasLot("T1")).isFalse();
        assertThat(catalog.ledger().record(LedgerEntry.of("T1", new StockEvent.Shipped(1), "Ann", "", "k1")))
                .isInstanceOf(LedgerResult.Refused.class);
    }

    @Test
    void putsFactsNamesAndTheChoiceBetweenSourcesBackExactly() {
        apply(maples().toArray(PlantDraft[]::new));
        apply(
                ImportPlan.Rank.REFERENCE,
                List.of(plant(RED_MAPLE, fact(Attributes.HABIT, "oval", Drafts.HANDBOOK))),
                List.of());
        List<Object> before = all();
        apply(
                alsoKnownAs(
                        called(
                                plant(
                                        RED_MAPLE,
                                        fact(Attributes.HEIGHT, "50-70 ft"),
                                        fact(Attributes.HABIT, "vase", Drafts.HANDBOOK),
                                        fact(Attributes.GROWTH_RATE, "fast")),
                                "scarlet maple"),
                        "Rufacer rubrum"),
                plant(ITEA, fact(Attributes.HEIGHT, "3-5 ft")));
        assertThat(all()).isNotEqualTo(before);
        UndoneImport undone = catalog.undo();
        assertThat(all()).isEqualTo(before);
        assertThat(undone.plantsRestored()).isEqualTo(1);
        assertThat(undone.plantsTakenOut()).isEqualTo(1);
    }

    @Test
    void givesPlantsBackTheNamesTheyHadBeforeTheySwappedThem() {
        apply(plant(RED_MAPLE), plant(ITEA));
        List<Object> before = all();
        apply(keyed(named(RED_MAPLE).key(), plant(ITEA)), keyed(named(ITEA).key(), plant(RED_MAPLE)));
        catalog.undo();
        assertThat(all()).isEqualTo(before);
    }

    @Test
    void putsCountsBackByEntriesOfTheLedger() {
        apply(maples().toArray(PlantDraft[]::new));
        stock(lot("T1", RED_MAPLE, 40), lot("T2", RED_MAPLE, 7));
        List<Object> before = all();
        stock(lot("T1", RED_MAPLE, 25), inSize(lot("T2", RED_MAPLE, 7), "#7"), lot("T3", RED_MAPLE, 3));
        assertThat(stockOf(RED_MAPLE).lots()).hasSize(3);
        catalog.undo();
        assertThat(all()).isEqualTo(before); // and check() finds every count the sum of its entries
    }

    @Test
    void takesSeveralImportsBackOneAfterTheOther() {
        apply(maples().toArray(PlantDraft[]::new));
        List<Object> first = all();
        stock(lot("T1", RED_MAPLE, 40));
        catalog.undo();
        assertThat(all()).isEqualTo(first);
        catalog.undo();
        assertThat(all()).isEmpty();
        refused("undo.none");
    }

    @Test
    void bringsTheSameKeysAndItemNumbersWhenTheFileIsLoadedAgain() {
        ImportPlan.Rank own = ImportPlan.Rank.OWN;
        apply(own, maples(), List.of(lot("T1", RED_MAPLE, 40), inSize(lot("T2", RED_MAPLE, 4), "#7")));
        List<Object> before = all();
        catalog.undo();
        apply(own, maples(), List.of(inSize(lot("T2", RED_MAPLE, 4), "#7"), lot("T1", RED_MAPLE, 40)));
        assertThat(all()).isEqualTo(before);
    }

    @Test
    void tellsReadersWhichPlantsAreDifferent() {
        CatalogRevision loaded = apply(maples().toArray(PlantDraft[]::new));
        catalog.undo();
        assertThat(catalog.view().changesSince(loaded)).hasSize(2);
        assertThat(catalog.view().plant(PlantKey.ofSerial(0))).isEmpty();
    }

    @Test
    void passesOverAnImportThatChangedNothing() {
        apply(plant(RED_MAPLE, fact(Attributes.HABIT, "oval")));
        apply(plant(RED_MAPLE, fact(Attributes.HABIT, "oval")));
        catalog.undo();
        assertThat(all()).isEmpty();
    }

    @Test
    void refusesWhenALotOfTheImportWasShippedFromSince() {
        apply(maples().toArray(PlantDraft[]::new));
        stock(lot("T1", RED_MAPLE, 40));
        catalog.ledger().record(LedgerEntry.of("T1", new StockEvent.Shipped(5), "Ann", "order 7", "k1"));
        refused("undo.lot.counted");
    }

    @Test
    void goesOnWhenOnlyOtherLotsWereShippedFromSince() {
        apply(maples().toArray(PlantDraft[]::new));
        stock(lot("T1", RED_MAPLE, 40));
        stock(lot("T2", RED_MAPLE, 9));
        catalog.ledger().record(LedgerEntry.of("T1", new StockEvent.Shipped(5), "Ann", "order 7", "k1"));
        catalog.undo();
        assertThat(stockOf(RED_MAPLE).lots()).extracting(each -> each.count()).containsExactly(35);
    }

    @Test
    void showsWhatAPlanWouldChangeAndChangesNothing() {
        apply(maples().toArray(PlantDraft[]::new));
        stock(lot("T1", RED_MAPLE, 40));
        List<Object> before = all();
        ImportDiff diff = catalog.rehearse(
                plan(
                        catalog,
                        ImportPlan.Rank.OWN,
                        List.of(
                                plant(RED_MAPLE, fact(Attributes.HABIT, "oval"), fact(Attributes.GROWTH_RATE, "fast")),
                                plant(OCTOBER_GLORY, fact(Attributes.HABIT, "oval")),
                                plant(ITEA, fact(Attributes.HEIGHT, "3-5 ft"))),
                        List.of(lot("T1", RED_MAPLE, 25), lot("T9", ITEA, 3))),
                100);
        assertThat(all()).isEqualTo(before);
        assertThat(catalog.view().revision()).isEqualTo(new CatalogRevision(2));
        assertThat(diff.newPlants()).isEqualTo(1);
        assertThat(diff.changedPlants()).isEqualTo(1);
        assertThat(diff.samePlants()).isEqualTo(1);
        assertThat(diff.newLots()).isEqualTo(1);
        assertThat(diff.changedLots()).isEqualTo(1);
        ImportDiff.Entry maple = diff.entries().get(0);
        assertThat(maple.title()).isEqualTo("Acer rubrum");
        assertThat(maple.differences())
                .containsExactlyInAnyOrder(
                        new ImportDiff.Difference(
                                "habit", Optional.of("rounded"), Optional.of("oval"), Drafts.LIST.text(), true),
                        new ImportDiff.Difference(
                                "growth_rate", Optional.empty(), Optional.of("fast"), Drafts.LIST.text(), true));
        ImportDiff.Entry lot = diff.entries().get(1);
        assertThat(lot.title()).isEqualTo("T1");
        assertThat(lot.differences())
                .containsExactly(new ImportDiff.Difference("count", Optional.of("40"), Optional.of("25"), "", true));
    }

    @Test
    void showsWhichValueANewSourceTakesThePlaceOf() {
        apply(
                ImportPlan.Rank.REFERENCE,
                List.of(plant(RED_MAPLE, fact(Attributes.HABIT, "oval", Drafts.HANDBOOK))),
                List.of());
        ImportDiff diff = catalog.rehearse(plan(catalog, plant(RED_MAPLE, fact(Attributes.HABIT, "vase"))), 9);
        assertThat(diff.entries().get(0).differences())
                .containsExactly(new ImportDiff.Difference(
                        "habit", Optional.of("oval"), Optional.of("vase"), Drafts.LIST.text(), true));
    }
}
