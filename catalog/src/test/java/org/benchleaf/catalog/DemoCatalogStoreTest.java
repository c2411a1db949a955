package org.benchleaf.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.benchleaf.catalog.intake.ColumnMap;
import org.benchleaf.catalog.intake.ColumnMaps;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.catalog.intake.ImportPlanner;
import org.benchleaf.catalog.intake.Sheet;
import org.benchleaf.catalog.intake.SheetReader;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.LotRecord;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.demo.DemoCatalog;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/// The demo nursery's spreadsheets, read, planned and applied to a real file.
@ParameterizedClass
@EnumSource(Engine.class)
class DemoCatalogStoreTest {
    @TempDir
    Path folder;

    private final Engine engine;

    DemoCatalogStoreTest(Engine engine) {
        this.engine = engine;
    }

    private static long importAll(Catalog catalog) throws IOException {
        long drafts = 0;
        for (String file : DemoCatalog.plantFiles()) {
            drafts += apply(catalog, file, ColumnMaps.ownPlants()).plants().size();
        }
        for (String file : DemoCatalog.stockFiles()) {
            drafts += apply(catalog, file, ColumnMaps.ownStock()).lots().size();
        }
        return drafts;
    }

    private static ImportPlan apply(Catalog catalog, String file, ColumnMap map) throws IOException {
        try (InputStream content = DemoCatalog.open(file);
                Sheet sheet = SheetReader.open(file, content.readAllBytes())) {
            ImportPlan plan = ImportPlanner.plan(sheet, map, catalog.names());
            catalog.apply(plan);
            return plan;
        }
    }

    @Test
    void isKeptAsItStandsAndIsTheSameAfterASecondImport() throws IOException {
        try (Catalog catalog = engine.create(folder)) {
            long drafts = importAll(catalog);
            CatalogRevision first = catalog.view().revision();
            List<PlantRecord> before = allPlants(catalog);
            List<LotRecord> lots = new ArrayList<>();
            catalog.view().forEachStock(stock -> lots.addAll(stock.lots()));
            assertThat(before.size() + (long) lots.size()).isEqualTo(drafts);
            assertThat(catalog.check()).isEmpty();

            importAll(catalog);

            assertThat(catalog.view().revision()).isEqualTo(first);
            assertThat(allPlants(catalog)).isEqualTo(before);
        }
    }

    @Test
    void givesEveryCultivarOfAKnownTaxonWhatTheTaxonStates() throws IOException {
        try (Catalog catalog = engine.create(folder)) {
            importAll(catalog);
            NameBook names = catalog.names();
            List<PlantRecord> cultivars = allPlants(catalog).stream()
                    .filter(plant ->
                            plant.name().taxonAbove().flatMap(names::byName).isPresent())
                    .toList();
            assertThat(cultivars)
                    .hasSizeGreaterThan(100)
                    .allSatisfy(plant -> assertThat(plant.taxon())
                            .isEqualTo(plant.name().taxonAbove().flatMap(names::byName)));
            assertThat(cultivars)
                    .as("hardiness is known of every plant of the demo, stated or inherited")
                    .allSatisfy(plant ->
                            assertThat(plant.facts().fact(Attributes.HARDINESS)).isPresent());
        }
    }

    private static List<PlantRecord> allPlants(Catalog catalog) {
        List<PlantRecord> plants = new ArrayList<>();
        catalog.view().forEachPlant(plants::add);
        return plants;
    }
}
