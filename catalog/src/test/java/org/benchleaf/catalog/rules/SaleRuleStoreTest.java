package org.benchleaf.catalog.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.benchleaf.catalog.rules.DemoRules.rows;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.benchleaf.catalog.Catalog;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.CatalogView.Change;
import org.benchleaf.catalog.Drafts;
import org.benchleaf.catalog.Engine;
import org.benchleaf.catalog.ImportRefused;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.rule.Destination;
import org.benchleaf.shared.rule.SaleVerdict.Answer;
import org.benchleaf.shared.rule.Shipment;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

@ParameterizedClass
@EnumSource(Engine.class)
class SaleRuleStoreTest {
    private static final BotanicalName PLANT = BotanicalName.ofSpecies("Reynoutria", "japonica");
    private static final BotanicalName CULTIVAR = PLANT.withCultivar("Crimson Beauty");
    private static final String RULE = "PA-1,,US-PA,Fallopia japonica,,,prohibited,,,%s,,,,a gazette,%s";

    @TempDir
    Path folder;

    private final Engine engine;

    SaleRuleStoreTest(Engine engine) {
        this.engine = engine;
    }

    private Catalog catalog;

    @BeforeEach
    void makeCatalog() {
        catalog = engine.create(folder);
        catalog.apply(Drafts.plan(
                catalog,
                ImportPlan.Rank.OWN,
                List.of(Drafts.alsoKnownAs(Drafts.plant(PLANT), "Fallopia japonica"), Drafts.plant(CULTIVAR)),
                List.of()));
    }

    @AfterEach
    void closeCatalog() {
        catalog.close();
    }

    private Answer answer(BotanicalName name, String day) {
        PlantRecord plant = catalog.names()
                .byName(name)
                .flatMap(key -> catalog.view().plant(key))
                .orElseThrow();
        Shipment shipment = Shipment.to(Destination.read("PA").orThrow(), LocalDate.parse(day));
        return plant.facts()
                .value(Attributes.SALE_RULES)
                .orElseThrow()
                .at(shipment)
                .answer();
    }

    @Test
    void plantCarriesWhatTheListsSayAndCultivarIsFoundBySynonymOfItsSpecies() {
        catalog.load(rows(RULE.formatted("2024-01-01", "2026-01-01")));

        assertThat(answer(PLANT, "2026-01-01")).isEqualTo(Answer.BARRED);
        assertThat(answer(CULTIVAR, "2026-01-01")).isEqualTo(Answer.BARRED);
        assertThat(answer(CULTIVAR, "2023-12-31")).isEqualTo(Answer.NO_RULE);
    }

    @Test
    void withoutListsAPlantCarriesNothing() {
        assertThat(catalog.view()
                        .plant(catalog.names().byName(PLANT).orElseThrow())
                        .orElseThrow()
                        .facts()
                        .fact(Attributes.SALE_RULES))
                .isEmpty();
    }

    // a listing can be later than a customer's order: the version of the quote is kept (reading list on sale rules, 6)
    @Test
    void earlierVersionOfAListStaysAsItWasWhenAQuoteWasMade() {
        CatalogRevision quoted = catalog.load(rows(RULE.formatted("2027-06-01", "2026-01-01")));
        catalog.load(rows(RULE.formatted("2027-03-01", "2027-02-01")));

        SaleRuleBook then = catalog.view().saleRulesAt(quoted);
        assertThat(DemoRules.ask(then, "Fallopia japonica", "PA", "2027-04-01").answer())
                .isEqualTo(Answer.NO_RULE);
        assertThat(then.rules().getFirst().compiledOn()).isEqualTo(LocalDate.of(2026, 1, 1));
        assertThat(answer(PLANT, "2027-04-01")).isEqualTo(Answer.BARRED);
    }

    @Test
    void loadingTellsThatEveryPlantMayBeJudgedOtherwise() {
        CatalogRevision before = catalog.view().revision();
        CatalogRevision after = catalog.load(rows(RULE.formatted("2024-01-01", "2026-01-01")));

        assertThat(catalog.view().revision()).isEqualTo(after);
        assertThat(catalog.view().changesSince(before))
                .hasSize(2)
                .allMatch(change ->
                        change.kind() == Change.Kind.PLANT && change.revision().equals(after));
    }

    @Test
    void listsSurviveClosing() {
        catalog.load(rows(RULE.formatted("2024-01-01", "2026-01-01")));
        catalog.close();
        catalog = engine.open(folder);

        assertThat(answer(PLANT, "2026-01-01")).isEqualTo(Answer.BARRED);
        assertThat(catalog.check()).isEmpty();
    }

    @Test
    void halfAListIsNotLoaded() {
        assertThatThrownBy(() -> catalog.load(rows(
                        RULE.formatted("2024-01-01", "2026-01-01"),
                        "PA-2,,Atlantis,Pyrus,,,prohibited,,,,,,,s,2026-01-01")))
                .isInstanceOf(ImportRefused.class);
        assertThat(catalog.view().saleRules().isEmpty()).isTrue();
    }
}
