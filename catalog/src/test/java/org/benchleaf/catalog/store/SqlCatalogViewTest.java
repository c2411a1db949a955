package org.benchleaf.catalog.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.benchleaf.catalog.Drafts.OCTOBER_GLORY;
import static org.benchleaf.catalog.Drafts.RED_MAPLE;

import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.Drafts;
import org.benchleaf.catalog.Engine;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.catalog.intake.LotDraft;
import org.benchleaf.catalog.intake.PlantDraft;
import org.benchleaf.catalog.model.Attributes;
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
class SqlCatalogViewTest {
    private static final Instant NOON = Instant.parse("2026-11-25T12:00:00Z");
    /// More than a page of plants, and more than one query's keys.
    private static final int MANY = 1234;

    @TempDir
    Path folder;

    private final Engine engine;

    SqlCatalogViewTest(Engine engine) {
        this.engine = engine;
    }

    private SqlCatalogStore store;

    @BeforeEach
    void makeStore() {
        store = SqlCatalogStore.create(engine.location(folder), Clock.fixed(NOON, ZoneOffset.UTC));
    }

    @AfterEach
    void closeStore() {
        store.close();
    }

    private CatalogRevision apply(List<PlantDraft> plants, List<LotDraft> lots) {
        return store.apply(
                new ImportPlan(
                        "plants.csv",
                        store.view().revision(),
                        ImportPlan.Rank.OWN,
                        plants.size(),
                        plants,
                        lots,
                        List.of()),
                written -> {});
    }

    private static BotanicalName many(int number) {
        return BotanicalName.ofSpecies("Itea", "virginica").withCultivar("Seedling " + number);
    }

    private void applyMany() {
        apply(
                IntStream.range(0, MANY)
                        .mapToObj(number -> Drafts.plant(many(number), Drafts.fact(Attributes.HEIGHT, "3-5 ft")))
                        .toList(),
                IntStream.range(0, MANY)
                        .mapToObj(number -> Drafts.lot("L" + number, many(number), number))
                        .toList());
    }

    @Test
    void handsOverEveryPlantOnceInTheOrderInWhichTheyCame() {
        applyMany();
        List<PlantKey> keys = new ArrayList<>();
        List<BotanicalName> names = new ArrayList<>();
        CatalogRevision revision = store.view().forEachPlant(plant -> {
            keys.add(plant.key());
            names.add(plant.name());
        });
        assertThat(keys).hasSize(MANY).doesNotHaveDuplicates();
        assertThat(names)
                .isEqualTo(IntStream.range(0, MANY)
                        .mapToObj(SqlCatalogViewTest::many)
                        .toList());
        assertThat(revision).isEqualTo(store.view().revision());

        List<PlantKey> stocked = new ArrayList<>();
        store.view().forEachStock(stock -> stocked.add(stock.plant()));
        assertThat(stocked).isEqualTo(keys);
    }

    @Test
    void readsManyPlantsAtOnceInTheOrderAskedAndLeavesOutUnknownOnes() {
        applyMany();
        List<PlantKey> asked = new ArrayList<>();
        store.view().forEachPlant(plant -> asked.addFirst(plant.key()));
        PlantKey unknown = PlantKey.ofSerial(77_777);
        asked.add(3, unknown);
        List<PlantKey> found = new ArrayList<>(store.view().plants(asked).keySet());
        asked.remove(unknown);
        assertThat(found).isEqualTo(asked);
        assertThat(store.view().stock(List.of(unknown))).containsValue(PlantStock.none(unknown));
    }

    @Test
    void handsOverOneStateHoweverMuchIsImportedMeanwhile() {
        applyMany();
        CatalogRevision before = store.view().revision();
        List<PlantKey> keys = new ArrayList<>();
        CatalogRevision seen = store.view().forEachPlant(plant -> {
            if (keys.isEmpty()) {
                importElsewhere();
            }
            keys.add(plant.key());
        });
        assertThat(seen).isEqualTo(before);
        assertThat(keys).hasSize(MANY);
        assertThat(store.view().revision().number()).isEqualTo(before.number() + 1);
    }

    /// On a thread of its own, as another user would.
    private void importElsewhere() {
        try {
            Thread.ofPlatform()
                    .start(() -> apply(
                            IntStream.range(0, 50)
                                    .mapToObj(number -> Drafts.plant(many(MANY + number)))
                                    .toList(),
                            List.of()))
                    .join();
        } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
        }
    }

    @Test
    void keepsThePageOfARetiredPlantButHandsItOverNoMore() throws SQLException {
        apply(Drafts.maples(), List.of());
        engine.sql(folder, "UPDATE plant SET retired = 1 WHERE name = 'Acer rubrum'");
        List<BotanicalName> names = new ArrayList<>();
        store.view().forEachPlant(plant -> names.add(plant.name()));
        assertThat(names).containsExactly(OCTOBER_GLORY);
        PlantKey maple = store.names().byName(RED_MAPLE).orElseThrow();
        assertThat(store.view().plant(maple))
                .hasValueSatisfying(plant -> assertThat(plant.retired()).isTrue());
        PlantKey glory = store.names().byName(OCTOBER_GLORY).orElseThrow();
        assertThat(store.view().plant(glory).orElseThrow().facts().fact(Attributes.HARDINESS))
                .as("what is no longer grown still says what its cultivars inherit")
                .isPresent();
    }

    @Test
    void keepsControlCharactersOutOfFacts() {
        apply(
                List.of(Drafts.plant(RED_MAPLE, Drafts.fact(Attributes.SELLING_NOTE, "red\u001ein\u001fOctober"))),
                List.of());
        assertThat(store.view()
                        .plants(Set.of(PlantKey.ofSerial(0)))
                        .values()
                        .iterator()
                        .next()
                        .facts()
                        .value(Attributes.SELLING_NOTE))
                .contains("red in October");
    }

    @Test
    void saysWhenTheLastChangeWas() {
        apply(Drafts.maples(), List.of());
        assertThat(store.view().changedAt()).contains(NOON);
    }
}
