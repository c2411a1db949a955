package org.benchleaf.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.benchleaf.catalog.Drafts.OCTOBER_GLORY;
import static org.benchleaf.catalog.Drafts.RED_MAPLE;
import static org.benchleaf.catalog.Drafts.inSize;
import static org.benchleaf.catalog.Drafts.lot;
import static org.benchleaf.catalog.Drafts.maples;
import static org.benchleaf.catalog.Drafts.plan;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.catalog.CatalogView.Change;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.catalog.intake.LotDraft;
import org.benchleaf.catalog.model.ItemRecord;
import org.benchleaf.catalog.model.LotRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.shared.code.ItemKey;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.stock.Condition;
import org.benchleaf.shared.stock.ItemForm;
import org.benchleaf.shared.stock.StockSize;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

@ParameterizedClass
@EnumSource(Engine.class)
class CatalogStockTest {
    @TempDir
    Path folder;

    private final Engine engine;

    CatalogStockTest(Engine engine) {
        this.engine = engine;
    }

    private Catalog catalog;
    private PlantKey glory;

    @BeforeEach
    void makeCatalogWithTwoMaples() {
        catalog = engine.create(folder);
        catalog.apply(plan(catalog, ImportPlan.Rank.OWN, maples(), List.of()));
        glory = catalog.names().byName(OCTOBER_GLORY).orElseThrow();
    }

    @AfterEach
    void closeCatalog() {
        assertThat(catalog.check()).isEmpty();
        catalog.close();
    }

    private CatalogRevision apply(LotDraft... lots) {
        return catalog.apply(plan(catalog, ImportPlan.Rank.OWN, List.of(), List.of(lots)));
    }

    private PlantStock stock() {
        return catalog.view().stock(List.of(glory)).values().iterator().next();
    }

    @Test
    void readsBackItemsAndLots() {
        apply(lot("T0001", OCTOBER_GLORY, 40));
        ItemKey item = new ItemKey(glory, 1);
        assertThat(stock().items())
                .containsExactly(new ItemRecord(
                        item,
                        StockSize.read("#3").orThrow(),
                        ItemForm.REGULAR,
                        Optional.empty(),
                        Optional.of(Money.usDollars("21.50"))));
        assertThat(stock().lots())
                .containsExactly(new LotRecord(
                        "T0001",
                        item,
                        "B4-12",
                        Optional.empty(),
                        40,
                        Set.of(Condition.FALL_COLOR_STARTING),
                        Optional.of(LocalDate.of(2026, 11, 12))));
    }

    @Test
    void hasAnEmptyStockForAPlantWithoutItems() {
        assertThat(stock()).isEqualTo(PlantStock.none(glory));
    }

    @Test
    void keepsAnItemsNumberAndCountsOnForNewSizes() {
        apply(lot("T0001", OCTOBER_GLORY, 40));
        apply(
                inSize(lot("T0002", OCTOBER_GLORY, 6), "2.5 in cal B&B"),
                lot("T0003", OCTOBER_GLORY, 9),
                inSize(lot("T0004", OCTOBER_GLORY, 3), "#15"));
        assertThat(stock().items())
                .extracting(item -> item.size() + " " + item.key().number())
                .containsExactly("#3 1", "#15 3", "2.5 in cal B&B 2");
        assertThat(stock().freeBy(new ItemKey(glory, 1), new YearWeek(2026, 48)))
                .isEqualTo(49);
    }

    @Test
    void correctsACountThatDiffersAndTellsTheFeed() {
        CatalogRevision first = apply(lot("T0001", OCTOBER_GLORY, 40));
        CatalogRevision second = apply(lot("T0001", OCTOBER_GLORY, 37));
        assertThat(stock().lots()).extracting(LotRecord::count).containsExactly(37);
        assertThat(catalog.view().changesSince(first)).containsExactly(new Change(second, glory, Change.Kind.STOCK));
    }

    @Test
    void movesALotThatWasPottedUpIntoItsNewSize() {
        apply(lot("T0001", OCTOBER_GLORY, 40));
        apply(inSize(lot("T0001", OCTOBER_GLORY, 40), "#7"));
        assertThat(stock().lots())
                .extracting(LotRecord::item, LotRecord::count)
                .containsExactly(org.assertj.core.groups.Tuple.tuple(new ItemKey(glory, 2), 40));
    }

    @Test
    void refusesALotNumberThatAnotherPlantHas() {
        apply(lot("T0001", OCTOBER_GLORY, 40));
        assertThatThrownBy(() -> apply(lot("T0001", RED_MAPLE, 40)))
                .isInstanceOfSatisfying(
                        ImportRefused.class,
                        refused -> assertThat(refused.problem().key()).isEqualTo("lot.other.plant"));
    }

    @Test
    void putsLotsOfOnePlanOntoPlantsOfTheSamePlan() {
        var itea = org.benchleaf.shared.name.BotanicalName.ofSpecies("Itea", "virginica");
        catalog.apply(plan(catalog, ImportPlan.Rank.OWN, List.of(Drafts.plant(itea)), List.of(lot("T0009", itea, 12))));
        List<PlantStock> all = new ArrayList<>();
        catalog.view().forEachStock(all::add);
        assertThat(all).singleElement().extracting(of -> of.lots().size()).isEqualTo(1);
        assertThat(catalog.names().hasLot("T0009")).isTrue();
    }
}
