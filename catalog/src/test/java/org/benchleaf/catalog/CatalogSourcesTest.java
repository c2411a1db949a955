package org.benchleaf.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.benchleaf.catalog.Drafts.HANDBOOK;
import static org.benchleaf.catalog.Drafts.LIST;
import static org.benchleaf.catalog.Drafts.OCTOBER_GLORY;
import static org.benchleaf.catalog.Drafts.RED_MAPLE;
import static org.benchleaf.catalog.Drafts.fact;
import static org.benchleaf.catalog.Drafts.plant;

import java.nio.file.Path;
import java.util.List;
import org.benchleaf.catalog.intake.ImportPlan.Rank;
import org.benchleaf.catalog.intake.PlantDraft;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.name.BotanicalName;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// The visible rule: the shop's own word, then the source it names before others, then the newest.
class CatalogSourcesTest {
    private static final Source USDA = new Source("USDA PLANTS characteristics");

    @TempDir
    Path folder;

    private Catalog catalog;

    @BeforeEach
    void makeCatalog() {
        catalog = Catalog.create(folder.resolve("catalog.db"));
        state(Rank.REFERENCE, plant(RED_MAPLE, fact(Attributes.HEIGHT, "68 ft", USDA)));
        state(Rank.REFERENCE, plant(RED_MAPLE, fact(Attributes.HEIGHT, "40-50 ft", HANDBOOK)));
        state(Rank.REFERENCE, plant(OCTOBER_GLORY, fact(Attributes.HABIT, "oval", HANDBOOK)));
    }

    @AfterEach
    void closeCatalog() {
        assertThat(catalog.check()).isEmpty();
        catalog.close();
    }

    private void state(Rank rank, PlantDraft... plants) {
        catalog.apply(Drafts.plan(catalog, rank, List.of(plants), List.of()));
    }

    private String heightBy(BotanicalName name) {
        PlantRecord plant =
                catalog.names().byName(name).flatMap(catalog.view()::plant).orElseThrow();
        return plant.facts().fact(Attributes.HEIGHT).orElseThrow().source().text();
    }

    @Test
    void showsTheNewestUntilTheShopNamesWhomItBelieves() {
        assertThat(heightBy(RED_MAPLE)).isEqualTo(HANDBOOK.text());
        CatalogRevision before = catalog.view().revision();

        CatalogRevision after = catalog.prefer(List.of("usda plants", "a handbook"));

        assertThat(after).isGreaterThan(before);
        assertThat(heightBy(RED_MAPLE)).isEqualTo(USDA.text());
        // its cultivar takes the height from it, so both are news
        assertThat(catalog.view().changesSince(before)).hasSize(2);
        assertThat(catalog.prefer(List.of("usda plants", "a handbook"))).isEqualTo(after);
        catalog.prefer(List.of("a handbook", "usda plants"));
        assertThat(heightBy(RED_MAPLE)).isEqualTo(HANDBOOK.text());
    }

    @Test
    void showsTheShopsOwnWordBeforeThatOfAnySource() {
        catalog.prefer(List.of("USDA PLANTS"));
        state(Rank.OWN, plant(RED_MAPLE, fact(Attributes.HEIGHT, "60 ft", LIST)));
        assertThat(heightBy(RED_MAPLE)).isEqualTo(LIST.text());
    }

    @Test
    void keepsTheSourceItBelievesWhenANewerOneArrives() {
        catalog.prefer(List.of("USDA PLANTS"));
        state(Rank.REFERENCE, plant(RED_MAPLE, fact(Attributes.HEIGHT, "45 ft", new Source("a website"))));
        assertThat(heightBy(RED_MAPLE)).isEqualTo(USDA.text());
    }

    @Test
    void takesNoSourceForAnotherThatOnlyBeginsLikeIt() {
        state(Rank.REFERENCE, plant(RED_MAPLE, fact(Attributes.HEIGHT, "9 ft", new Source("USDA PLANTSMAN"))));
        state(Rank.REFERENCE, plant(RED_MAPLE, fact(Attributes.HEIGHT, "45 ft", new Source("a website"))));
        catalog.prefer(List.of("USDA PLANTS"));
        assertThat(heightBy(RED_MAPLE)).isEqualTo(USDA.text());
    }

    @Test
    void choosesByWhatItBelievesNowWhenALoadIsTakenBack() {
        catalog.undo(); // the cultivar
        state(Rank.REFERENCE, plant(RED_MAPLE, fact(Attributes.HEIGHT, "45 ft", new Source("a website"))));
        catalog.prefer(List.of("USDA PLANTS"));
        catalog.undo();
        assertThat(heightBy(RED_MAPLE)).isEqualTo(USDA.text());
    }
}
