package org.benchleaf.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.benchleaf.catalog.Drafts.HANDBOOK;
import static org.benchleaf.catalog.Drafts.LIST;
import static org.benchleaf.catalog.Drafts.OCTOBER_GLORY;
import static org.benchleaf.catalog.Drafts.RED_MAPLE;
import static org.benchleaf.catalog.Drafts.called;
import static org.benchleaf.catalog.Drafts.fact;
import static org.benchleaf.catalog.Drafts.keyed;
import static org.benchleaf.catalog.Drafts.maples;
import static org.benchleaf.catalog.Drafts.plan;
import static org.benchleaf.catalog.Drafts.plant;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.benchleaf.catalog.CatalogView.Change;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.catalog.intake.PlantDraft;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.CommonName;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.PlantRecord;
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
class CatalogFactsTest {
    @TempDir
    Path folder;

    private final Engine engine;

    CatalogFactsTest(Engine engine) {
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
    void letsACultivarInheritWhatItDoesNotState() {
        apply(maples());
        PlantRecord cultivar = named(OCTOBER_GLORY);
        assertThat(cultivar.taxon()).contains(named(RED_MAPLE).key());
        assertThat(cultivar.facts().fact(Attributes.HABIT)).contains(fact(Attributes.HABIT, "oval"));
        assertThat(cultivar.facts().fact(Attributes.HARDINESS))
                .contains(fact(Attributes.HARDINESS, "3-9").asInherited());
    }

    @Test
    void letsACultivarInheritThroughAVarietyFromTheSpecies() {
        BotanicalName species = BotanicalName.ofSpecies("Viburnum", "plicatum");
        BotanicalName form = new BotanicalName(
                HybridMark.NONE,
                "Viburnum",
                species.species(),
                Optional.of(new Infraspecific(Rank.FORM, Epithet.of("tomentosum"))),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        BotanicalName mariesii = form.withCultivar("Mariesii");
        apply(
                plant(mariesii, fact(Attributes.HABIT, "spreading")),
                plant(form, fact(Attributes.HEIGHT, "8-10 ft")),
                plant(species, fact(Attributes.HEIGHT, "8-15 ft"), fact(Attributes.HARDINESS, "5-8")));
        PlantRecord cultivar = named(mariesii);
        assertThat(cultivar.facts().fact(Attributes.HEIGHT))
                .contains(fact(Attributes.HEIGHT, "8-10 ft").asInherited());
        assertThat(cultivar.facts().fact(Attributes.HARDINESS))
                .contains(fact(Attributes.HARDINESS, "5-8").asInherited());
        assertThat(cultivar.taxon()).contains(named(form).key());
    }

    @Test
    void findsTheTaxonThatArrivesAfterItsCultivar() {
        CatalogRevision first = apply(plant(OCTOBER_GLORY));
        assertThat(named(OCTOBER_GLORY).taxon()).isEmpty();
        apply(plant(RED_MAPLE, fact(Attributes.HARDINESS, "3-9")));
        PlantRecord cultivar = named(OCTOBER_GLORY);
        assertThat(cultivar.taxon()).contains(named(RED_MAPLE).key());
        assertThat(cultivar.facts().fact(Attributes.HARDINESS)).isPresent();
        assertThat(catalog.view().changesSince(first))
                .extracting(Change::plant)
                .as("the cultivar is different too, or an index would never hear of it")
                .containsExactlyInAnyOrder(cultivar.key(), named(RED_MAPLE).key());
    }

    @Test
    void tellsTheCultivarsWhenTheirTaxonHasNews() {
        CatalogRevision first = apply(maples());
        CatalogRevision second = apply(plant(RED_MAPLE, fact(Attributes.GROWTH_RATE, "fast")));
        assertThat(catalog.view().changesSince(first))
                .containsExactlyInAnyOrder(
                        new Change(second, named(RED_MAPLE).key(), Change.Kind.PLANT),
                        new Change(second, named(OCTOBER_GLORY).key(), Change.Kind.PLANT));
    }

    @Test
    void takesItsCultivarsAlongOnlyWhileTheTaxonHasTheirName() {
        CatalogRevision first = apply(maples());
        apply(keyed(named(RED_MAPLE).key(), plant(BotanicalName.ofSpecies("Acer", "rubescens"))));
        assertThat(named(OCTOBER_GLORY).taxon()).isEmpty();
        assertThat(catalog.view().changesSince(first))
                .extracting(Change::plant)
                .contains(named(OCTOBER_GLORY).key());
    }

    @Test
    void keepsBothWhenTwoSourcesDisagreeAndChoosesOne() {
        Fact<?> own = fact(Attributes.HEIGHT, "40-50 ft", LIST);
        Fact<?> reference = fact(Attributes.HEIGHT, "40-70 ft", HANDBOOK);
        apply(plant(RED_MAPLE, own));
        catalog.apply(plan(catalog, ImportPlan.Rank.REFERENCE, List.of(plant(RED_MAPLE, reference)), List.of()));
        PlantRecord maple = named(RED_MAPLE);
        assertThat(maple.facts().all())
                .as("the shop's own counts before a reference work, even one read later")
                .isEqualTo(List.of(own));
        assertThat(maple.otherFacts()).isEqualTo(List.of(reference));
    }

    @Test
    void choosesTheNewerOfTwoSourcesOfOneRank() {
        Fact<?> older = fact(Attributes.HEIGHT, "40-50 ft", LIST);
        Fact<?> newer = fact(Attributes.HEIGHT, "40-70 ft", HANDBOOK);
        apply(plant(RED_MAPLE, older));
        apply(plant(RED_MAPLE, newer));
        apply(plant(RED_MAPLE, older)); // said again, not new
        assertThat(named(RED_MAPLE).facts().all()).isEqualTo(List.of(newer));
        assertThat(named(RED_MAPLE).otherFacts()).isEqualTo(List.of(older));
    }

    @Test
    void keepsItsChoiceBetweenTwoSourcesOfOneFileWhenAThirdOfLowerRankSpeaks() {
        List<PlantDraft> rows = List.of(
                plant(RED_MAPLE, fact(Attributes.HABIT, "oval", HANDBOOK)),
                plant(RED_MAPLE, fact(Attributes.HABIT, "rounded", LIST)));
        CatalogRevision first = apply(rows);
        assertThat(apply(rows)).isEqualTo(first);
        PlantDraft third = plant(RED_MAPLE, fact(Attributes.HABIT, "vase", new Source("a third")));
        catalog.apply(plan(catalog, ImportPlan.Rank.REFERENCE, List.of(third), List.of()));
        assertThat(named(RED_MAPLE).facts().value(Attributes.HABIT)).contains(Habit.ROUNDED);
        assertThat(named(RED_MAPLE).otherFacts()).hasSize(2);
        assertThat(catalog.check()).isEmpty();
    }

    @Test
    void replacesWhatASourceStatedBefore() {
        apply(plant(RED_MAPLE, fact(Attributes.HEIGHT, "40-50 ft")));
        apply(plant(RED_MAPLE, fact(Attributes.HEIGHT, "40-60 ft")));
        assertThat(named(RED_MAPLE).facts().all()).isEqualTo(List.of(fact(Attributes.HEIGHT, "40-60 ft")));
        assertThat(named(RED_MAPLE).otherFacts()).isEmpty();
    }

    @Test
    void replacesCommonNamesByLanguageAndKeepsThemWhenTheCellIsEmpty() {
        apply(maples());
        apply(plant(RED_MAPLE));
        assertThat(named(RED_MAPLE).commonName(Locale.ENGLISH)).contains("red maple");
        apply(called(plant(RED_MAPLE), "scarlet maple", "red maple"));
        assertThat(named(RED_MAPLE).commonNames())
                .extracting(CommonName::text)
                .containsExactly("scarlet maple", "red maple");
    }
}
