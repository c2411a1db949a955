package org.benchleaf.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.benchleaf.catalog.Drafts.LIST;
import static org.benchleaf.catalog.Drafts.OCTOBER_GLORY;
import static org.benchleaf.catalog.Drafts.RED_MAPLE;
import static org.benchleaf.catalog.Drafts.alsoKnownAs;
import static org.benchleaf.catalog.Drafts.called;
import static org.benchleaf.catalog.Drafts.fact;
import static org.benchleaf.catalog.Drafts.keyed;
import static org.benchleaf.catalog.Drafts.lot;
import static org.benchleaf.catalog.Drafts.maples;
import static org.benchleaf.catalog.Drafts.plan;
import static org.benchleaf.catalog.Drafts.plant;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.catalog.CatalogView.Change;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.catalog.intake.PlantDraft;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.CommonName;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.Synonym;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.name.Epithet;
import org.benchleaf.shared.name.HybridMark;
import org.benchleaf.shared.name.Infraspecific;
import org.benchleaf.shared.name.Rank;
import org.benchleaf.shared.plant.Habit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

@ParameterizedClass
@EnumSource(Engine.class)
class CatalogImportTest {
    private static final CatalogRevision EMPTY = new CatalogRevision(0);

    @TempDir
    Path folder;

    private final Engine engine;

    CatalogImportTest(Engine engine) {
        this.engine = engine;
    }

    private Catalog catalog;

    @BeforeEach
    void makeCatalog() {
        catalog = engine.create(folder);
    }

    @AfterEach
    void closeCatalog() {
        catalog.close();
    }

    private CatalogRevision apply(List<PlantDraft> drafts) {
        return catalog.apply(plan(catalog, ImportPlan.Rank.OWN, drafts, List.of()));
    }

    private CatalogRevision apply(PlantDraft... drafts) {
        return apply(List.of(drafts));
    }

    private PlantRecord named(BotanicalName name) {
        return catalog.names().byName(name).flatMap(catalog.view()::plant).orElseThrow();
    }

    @Test
    void startsEmptyAtRevisionZero() {
        assertThat(catalog.view().revision()).isEqualTo(EMPTY);
        assertThat(catalog.view().changedAt()).isEmpty();
        assertThat(catalog.view().plant(PlantKey.ofSerial(0))).isEmpty();
        assertThat(catalog.check()).isEmpty();
    }

    @Test
    void readsBackWhatWasImported() {
        apply(alsoKnownAs(
                called(plant(RED_MAPLE, fact(Attributes.HEIGHT, "40-60 ft")), "red maple", "swamp maple"),
                "Rufacer rubrum"));

        PlantRecord maple = named(RED_MAPLE);
        assertThat(maple.key()).isEqualTo(PlantKey.ofSerial(0));
        assertThat(maple.taxon()).isEmpty();
        assertThat(maple.commonNames())
                .containsExactly(
                        new CommonName("red maple", Locale.ENGLISH), new CommonName("swamp maple", Locale.ENGLISH));
        assertThat(maple.synonyms()).containsExactly(new Synonym("Rufacer rubrum", LIST));
        assertThat(maple.facts().all()).isEqualTo(List.of(fact(Attributes.HEIGHT, "40-60 ft")));
        assertThat(maple.retired()).isFalse();
        assertThat(catalog.view().changedAt()).isPresent();
    }

    @Test
    void keepsEveryPartOfANameApart() {
        BotanicalName full = new BotanicalName(
                HybridMark.HYBRID,
                "Mahoberberis",
                Optional.of(new Epithet(HybridMark.HYBRID, "aquisargentii")),
                Optional.of(new Infraspecific(Rank.FORM, Epithet.of("glabra"))),
                Optional.of("Lace-cap"),
                Optional.of("L'Été d'Or"),
                Optional.of("Summer Gold"));
        BotanicalName chimaera = new BotanicalName(
                HybridMark.GRAFT,
                "Crataegomespilus",
                Optional.of(Epithet.of("dardarii")),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        apply(plant(full), plant(chimaera), plant(BotanicalName.ofGenus("Itea").withCultivar("Henry's Garnet")));
        assertThat(named(full).name()).isEqualTo(full);
        assertThat(named(chimaera).name()).isEqualTo(chimaera);
    }

    @Test
    void changesNothingWhenTheSameFileIsAppliedTwice() {
        List<PlantDraft> drafts = new ArrayList<>(maples());
        drafts.add(alsoKnownAs(plant(BotanicalName.ofSpecies("Aronia", "arbutifolia")), "Photinia pyrifolia"));
        ImportPlan.Rank own = ImportPlan.Rank.OWN;
        CatalogRevision first = catalog.apply(plan(catalog, own, drafts, List.of(lot("T0001", OCTOBER_GLORY, 40))));
        PlantRecord before = named(OCTOBER_GLORY);

        CatalogRevision second = catalog.apply(plan(catalog, own, drafts, List.of(lot("T0001", OCTOBER_GLORY, 40))));

        assertThat(second).isEqualTo(first);
        assertThat(catalog.view().changesSince(first)).isEmpty();
        assertThat(named(OCTOBER_GLORY)).isEqualTo(before);
    }

    @Test
    void letsTheLaterOfTwoRowsCountAndStillChangesNothingTheSecondTime() {
        List<PlantDraft> rows = List.of(
                plant(RED_MAPLE, fact(Attributes.HABIT, "oval")), plant(RED_MAPLE, fact(Attributes.HABIT, "rounded")));
        CatalogRevision first = apply(rows);
        assertThat(named(RED_MAPLE).facts().value(Attributes.HABIT)).contains(Habit.ROUNDED);
        assertThat(apply(rows)).isEqualTo(first);
    }

    @Test
    void refusesAPlanMadeForAnEarlierStateAndChangesNothing() {
        ImportPlan stale = plan(catalog, plant(BotanicalName.ofSpecies("Itea", "virginica")));
        CatalogRevision now = apply(maples());
        assertThatThrownBy(() -> catalog.apply(stale)).isInstanceOfSatisfying(ImportRefused.class, refused -> {
            assertThat(refused.problem().key()).isEqualTo("import.stale");
            assertThat(refused.problem().details()).containsEntry("base", "0").containsEntry("now", "1");
        });
        assertThat(catalog.view().revision()).isEqualTo(now);
        assertThat(catalog.names().byName(BotanicalName.ofSpecies("Itea", "virginica")))
                .isEmpty();
    }

    @Test
    void appliesNothingWhenOneRowInTheMiddleCannotBeApplied() {
        ImportPlan plan = plan(
                catalog,
                ImportPlan.Rank.OWN,
                maples(),
                List.of(
                        lot("T0001", OCTOBER_GLORY, 40),
                        lot("T0002", BotanicalName.ofSpecies("Nyssa", "sylvatica"), 5),
                        lot("T0003", RED_MAPLE, 7)));
        assertThatThrownBy(() -> catalog.apply(plan)).isInstanceOfSatisfying(ImportRefused.class, refused -> {
            assertThat(refused.problem().key()).isEqualTo("lot.plant.unknown");
            assertThat(refused.place()).isPresent();
        });
        assertThat(catalog.view().revision()).isEqualTo(EMPTY);
        assertThat(catalog.view().changesSince(EMPTY)).isEmpty();
        assertThat(catalog.names().byName(RED_MAPLE)).isEmpty();
        assertThat(catalog.names().hasLot("T0001")).isFalse();
    }

    @Test
    void namesAPlantThatChangedTwiceOnceAtItsLastChange() {
        apply(maples());
        CatalogRevision second = apply(plant(OCTOBER_GLORY, fact(Attributes.HABIT, "rounded")));
        assertThat(catalog.view().changesSince(EMPTY))
                .extracting(Change::revision)
                .containsExactly(new CatalogRevision(1), second);
    }

    @Test
    void keepsKeyAndOldNameWhenAPlantIsRenamed() {
        BotanicalName old = BotanicalName.ofSpecies("Photinia", "melanocarpa");
        BotanicalName now = BotanicalName.ofSpecies("Aronia", "melanocarpa");
        apply(plant(old, fact(Attributes.HARDINESS, "3-8")));
        PlantKey key = named(old).key();

        apply(keyed(key, plant(now)));

        PlantRecord renamed = catalog.view().plant(key).orElseThrow();
        assertThat(renamed.name()).isEqualTo(now);
        assertThat(renamed.synonyms())
                .containsExactly(new Synonym("Photinia melanocarpa", new Source("formerly in this catalog")));
        assertThat(renamed.facts().fact(Attributes.HARDINESS)).isPresent();
        assertThat(catalog.names().byName(old)).isEmpty();
        assertThat(catalog.names().bySynonym("photinia  Melanocarpa")).contains(key);
    }

    @Test
    void letsTwoPlantsTakeEachOthersName() {
        BotanicalName one = BotanicalName.ofSpecies("Hosta", "plantaginea");
        BotanicalName other = BotanicalName.ofSpecies("Hosta", "ventricosa");
        apply(plant(one), plant(other));
        PlantKey first = named(one).key();
        PlantKey second = named(other).key();
        apply(keyed(first, plant(other)), keyed(second, plant(one)));
        assertThat(named(other).key()).isEqualTo(first);
        assertThat(named(one).key()).isEqualTo(second);
    }

    @Test
    void refusesToGiveAPlantTheNameOfAnother() {
        apply(maples());
        ImportPlan plan = plan(catalog, keyed(named(OCTOBER_GLORY).key(), plant(RED_MAPLE)));
        assertThatThrownBy(() -> catalog.apply(plan))
                .isInstanceOfSatisfying(
                        ImportRefused.class,
                        refused -> assertThat(refused.problem().key()).isEqualTo("plant.name.taken"));
    }

    @Test
    void registersAKeyThatTheCatalogDoesNotKnowAsItIs() {
        PlantKey given = PlantKey.ofSerial(1); // the very key that the second new plant would get
        apply(
                plant(RED_MAPLE),
                plant(OCTOBER_GLORY),
                keyed(given, plant(BotanicalName.ofSpecies("Itea", "virginica"))));
        assertThat(named(BotanicalName.ofSpecies("Itea", "virginica")).key()).isEqualTo(given);
        apply(plant(BotanicalName.ofSpecies("Nyssa", "sylvatica")));
        Map<PlantKey, BotanicalName> plants = new LinkedHashMap<>();
        catalog.view().forEachPlant(plant -> plants.put(plant.key(), plant.name()));
        assertThat(plants.values())
                .as("four keys, in the order in which they were registered: of one list those with keys first")
                .containsExactly(
                        BotanicalName.ofSpecies("Itea", "virginica"),
                        RED_MAPLE,
                        OCTOBER_GLORY,
                        BotanicalName.ofSpecies("Nyssa", "sylvatica"));
    }

    @Test
    void knowsNoPlantBySynonymThatTwoShare() {
        apply(
                alsoKnownAs(plant(RED_MAPLE), "Acer sanguineum"),
                alsoKnownAs(plant(OCTOBER_GLORY), "Acer sanguineum", "Acer × freemanii"));
        assertThat(catalog.names().bySynonym("Acer sanguineum")).isEmpty();
        assertThat(catalog.names().bySynonym("acer x freemanii"))
                .contains(named(OCTOBER_GLORY).key());
    }
}
