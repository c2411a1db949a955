package org.benchleaf.catalog.lists;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.Optional;
import org.benchleaf.catalog.Catalog;
import org.benchleaf.catalog.Engine;
import org.benchleaf.catalog.ListRefused;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.measure.HardinessZone;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.rule.Destination;
import org.benchleaf.shared.site.Exposure;
import org.benchleaf.shared.stock.StockSize;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/// What a store of plant lists promises, on every database.
@ParameterizedClass
@EnumSource(Engine.class)
class PlantListsTest {
    private static final PlantKey PLANT = PlantKey.ofSerial(7);
    private static final ListSite SITE = new ListSite(
            Optional.of(HardinessZone.of(6, 'a')),
            Optional.of(Exposure.PART_SHADE),
            Optional.empty(),
            Destination.read("US-PA").toOptional(),
            Optional.of(new YearWeek(2027, 15)));

    private final Engine engine;

    @TempDir
    Path folder;

    private Catalog catalog;

    PlantListsTest(Engine engine) {
        this.engine = engine;
    }

    @BeforeEach
    void open() {
        catalog = engine.create(folder);
    }

    @AfterEach
    void close() {
        assertThat(catalog.check()).isEmpty();
        catalog.close();
    }

    private static PlantList withLine(PlantList list) {
        return list.with(
                number -> new ListLine(number, PLANT, StockSize.read("#3").toOptional(), 40, "a row", "by the pond"));
    }

    @Test
    void isThereAgainWhenTheCatalogIsOpenedAnew() {
        catalog.lists().save(withLine(PlantList.empty("Mill Lane", SITE)));
        catalog.close();
        catalog = engine.open(folder);

        PlantList found = catalog.lists().find("mill lane").orElseThrow();

        assertThat(found.name()).isEqualTo("Mill Lane");
        assertThat(found.site()).isEqualTo(SITE);
        assertThat(found.lines())
                .containsExactly(new ListLine(1, PLANT, StockSize.read("#3").toOptional(), 40, "a row", "by the pond"));
        assertThat(catalog.lists().names()).containsExactly("Mill Lane");
    }

    @Test
    void numbersOfLinesAreNotUsedAgain() {
        PlantList list = catalog.lists().save(withLine(withLine(PlantList.empty("A", ListSite.UNKNOWN))));
        PlantList shorter = catalog.lists().save(list.without(2));

        assertThat(withLine(shorter).lines()).extracting(ListLine::number).containsExactly(1, 3);
    }

    @Test
    void twoListsOfOneNameAreRefused() {
        catalog.lists().save(PlantList.empty("A", ListSite.UNKNOWN));

        assertThatThrownBy(() -> catalog.lists().save(PlantList.empty("a", ListSite.UNKNOWN)))
                .isInstanceOf(ListRefused.class)
                .hasMessageContaining("list.exists");
    }

    @Test
    void theSecondOfTwoPeopleWhoChangeAListAtOnceIsTold() {
        PlantList list = catalog.lists().save(PlantList.empty("A", ListSite.UNKNOWN));
        catalog.lists().save(withLine(list));

        assertThatThrownBy(() -> catalog.lists().save(list.at(SITE)))
                .isInstanceOf(ListRefused.class)
                .hasMessageContaining("list.stale");
        assertThat(catalog.lists().find("A").orElseThrow().lines()).hasSize(1);
    }

    @Test
    void aDeletedListIsGoneAndChangesNoRevision() {
        var before = catalog.view().revision();
        catalog.lists().save(withLine(PlantList.empty("A", ListSite.UNKNOWN)));

        assertThat(catalog.lists().delete("A")).isTrue();
        assertThat(catalog.lists().delete("A")).isFalse();
        assertThat(catalog.lists().find("A")).isEmpty();
        assertThat(catalog.view().revision()).isEqualTo(before);
    }
}
