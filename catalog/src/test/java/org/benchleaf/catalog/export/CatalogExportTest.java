package org.benchleaf.catalog.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.benchleaf.catalog.Drafts.OCTOBER_GLORY;
import static org.benchleaf.catalog.Drafts.RED_MAPLE;
import static org.benchleaf.catalog.Drafts.alsoKnownAs;
import static org.benchleaf.catalog.Drafts.fact;
import static org.benchleaf.catalog.Drafts.lot;
import static org.benchleaf.catalog.Drafts.maples;
import static org.benchleaf.catalog.Drafts.plant;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.benchleaf.catalog.Catalog;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.Drafts;
import org.benchleaf.catalog.Engine;
import org.benchleaf.catalog.audit.Audit;
import org.benchleaf.catalog.audit.AuditSums;
import org.benchleaf.catalog.audit.PlantAudit;
import org.benchleaf.catalog.export.CatalogExport.Format;
import org.benchleaf.catalog.intake.ColumnMap;
import org.benchleaf.catalog.intake.ColumnMaps;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.catalog.intake.ImportPlanner;
import org.benchleaf.catalog.intake.Place;
import org.benchleaf.catalog.intake.PlantDraft;
import org.benchleaf.catalog.intake.Sheet;
import org.benchleaf.catalog.intake.SheetReader;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Synonym;
import org.benchleaf.catalog.names.OlderNames;
import org.benchleaf.shared.name.BotanicalName;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

@ParameterizedClass
@EnumSource(Engine.class)
class CatalogExportTest {
    @TempDir
    Path folder;

    private final Engine engine;

    CatalogExportTest(Engine engine) {
        this.engine = engine;
    }

    private Catalog catalog;

    @BeforeEach
    void makeCatalog() {
        catalog = engine.create(folder);
        List<PlantDraft> plants = new ArrayList<>(maples());
        plants.add(alsoKnownAs(
                plant(
                        BotanicalName.ofSpecies("Itea", "virginica"),
                        fact(Attributes.DESCRIPTION, "-5 °F, says the list; \"sweetspire\""),
                        fact(Attributes.SELLING_NOTE, "=SUM of fall colors"),
                        fact(Attributes.BLOOM, "Nov-Feb"),
                        fact(Attributes.FLOWER_COLOR, "white #F4F2EA; pink #E59AB0"),
                        fact(Attributes.DEER, "seldom", Drafts.HANDBOOK)),
                "Itea japonica"));
        catalog.apply(Drafts.plan(catalog, ImportPlan.Rank.REFERENCE, plants, List.of(lot("=1", OCTOBER_GLORY, 40))));
    }

    @AfterEach
    void closeCatalog() {
        catalog.close();
    }

    private ImportPlan plan(String file, byte[] bytes, ColumnMap map) {
        try (Sheet sheet = SheetReader.open(file, bytes)) {
            return ImportPlanner.plan(sheet, map, catalog.names());
        }
    }

    @ParameterizedTest
    @EnumSource(Format.class)
    void comesBackWithoutAChangeOrAFinding(Format format) throws IOException {
        CatalogRevision before = catalog.view().revision();
        for (boolean darwinCore : new boolean[] {false, true}) {
            ByteArrayOutputStream plants = new ByteArrayOutputStream();
            assertThat(CatalogExport.plants(catalog.view(), format, darwinCore, plants))
                    .isEqualTo(3);
            ImportPlan plan = plan("plants." + format, plants.toByteArray(), ColumnMaps.ownPlants());
            assertThat(plan.findings()).isEmpty();
            assertThat(plan.plants()).hasSize(3);
            assertThat(catalog.rehearse(plan, 10).entries()).isEmpty();
            assertThat(catalog.apply(plan)).isEqualTo(before);
        }
        ByteArrayOutputStream stock = new ByteArrayOutputStream();
        assertThat(CatalogExport.stock(catalog.view(), format, stock)).isEqualTo(1);
        ImportPlan plan = plan("stock." + format, stock.toByteArray(), ColumnMaps.ownStock());
        assertThat(plan.findings()).isEmpty();
        assertThat(plan.lots()).hasSize(1);
        assertThat(catalog.apply(plan)).isEqualTo(before);
    }

    @ParameterizedTest
    @EnumSource(Format.class)
    void bringsEverySourceIntoAnotherCatalogAsItWas(Format format) throws IOException {
        catalog.apply(Drafts.plan(
                catalog,
                ImportPlan.Rank.REFERENCE,
                List.of(
                        alsoKnownAs(
                                plant(RED_MAPLE, fact(Attributes.HEIGHT, "5-8 ft", Drafts.HANDBOOK)),
                                "Acer stenocarpum"),
                        new PlantDraft(
                                new Place("plants.csv", 3, java.util.Optional.empty()),
                                java.util.Optional.empty(),
                                OCTOBER_GLORY,
                                List.of(),
                                List.of(
                                        new Synonym("Acer rubrum 'PNI 0268'", Drafts.LIST),
                                        new Synonym("Acer rubrum 'PNI 0268'", Drafts.HANDBOOK)),
                                List.of())),
                List.of()));
        byte[] first = everySource(catalog, format);
        CatalogRevision before = catalog.view().revision();

        ImportPlan again = plan("plants." + format, first, ColumnMaps.ownPlants());
        assertThat(again.findings()).isEmpty();
        assertThat(catalog.rehearse(again, 10).entries()).isEmpty();
        assertThat(catalog.apply(again)).isEqualTo(before);

        try (Catalog other = Catalog.create(folder.resolve("other.db"));
                Sheet sheet = SheetReader.open("plants." + format, first)) {
            other.apply(ImportPlanner.plan(sheet, ColumnMaps.ownPlants(), other.names()));
            assertThat(rows(everySource(other, format), other)).isEqualTo(rows(first, catalog));
            assertThat(other.view().plant(red().key()).orElseThrow().otherFacts())
                    .isEqualTo(red().otherFacts())
                    .hasSize(1);
        }
    }

    private static byte[] everySource(Catalog from, Format format) throws IOException {
        ByteArrayOutputStream plants = new ByteArrayOutputStream();
        assertThat(CatalogExport.plants(from.view(), format, false, true, plants))
                .isGreaterThan(4);
        return plants.toByteArray();
    }

    /// A workbook bears the time it was written; what it says does not.
    private static List<PlantDraft> rows(byte[] export, Catalog of) {
        try (Sheet sheet = SheetReader.open("plants", export)) {
            return List.copyOf(ImportPlanner.plan(sheet, ColumnMaps.ownPlants(), of.names())
                    .plants());
        }
    }

    @ParameterizedTest
    @CsvSource({"=1+1, '''=1+1'", "-5, -5", "+3.5, +3.5", "-5 °F, '''-5 °F'", "@x, '''@x'", "5-9, 5-9", "Acer, Acer"})
    void neverWritesACellThatRunsAsAFormula(String cell, String written) {
        assertThat(CsvTable.safe(cell)).isEqualTo(written);
    }

    @Test
    void namesTheTaxonInTermsOfDarwinCore() throws IOException {
        ByteArrayOutputStream plants = new ByteArrayOutputStream();
        CatalogExport.plants(catalog.view(), Format.CSV, true, plants);
        assertThat(plants.toString(StandardCharsets.UTF_8))
                .contains("dwc:scientificName,dwc:family,dwc:genus")
                .contains(",Acer rubrum 'October Glory',,Acer,rubrum,,October Glory,cultivar,,ICNCP");
    }

    @Test
    void auditsGapsConflictsAndWhatCannotBe() {
        catalog.apply(Drafts.plan(
                catalog,
                plant(
                        RED_MAPLE,
                        fact(Attributes.HEIGHT, "5-8 ft", Drafts.HANDBOOK),
                        fact(Attributes.HEIGHT_10YR, "70-80 ft", Drafts.HANDBOOK))));
        List<PlantAudit> plants = new ArrayList<>();
        AuditSums sums = Audit.run(catalog.view(), catalog.names(), OlderNames.shipped(), plants::add);
        assertThat(sums.plants()).isEqualTo(3);
        assertThat(sums.score()).isBetween(1.0, 60.0);
        PlantAudit maple = plants.stream()
                .filter(each -> each.name().equals(RED_MAPLE))
                .findFirst()
                .orElseThrow();
        assertThat(maple.remarks())
                .extracting(remark -> remark.kind() + " " + remark.attribute())
                .contains("IMPOSSIBLE height_10yr", "CONFLICT height", "GAP exposure")
                .doesNotContain("GAP hardiness");
        assertThat(sums.gapsByAttribute()).containsEntry("exposure", 3).containsEntry("photographs", 3);
    }

    @Test
    void tellsOfEachPlantByAnOlderNameWhichNameIsAcceptedAndByWhom() {
        // Cimicifuga: Iowa State University Extension, 1994 and 2015; Cornus stolonifera: USDA PLANTS
        catalog.apply(Drafts.plan(
                catalog,
                plant(BotanicalName.ofSpecies("Cimicifuga", "racemosa").withCultivar("Atropurpurea")),
                plant(BotanicalName.ofSpecies("Cornus", "stolonifera")),
                plant(BotanicalName.ofSpecies("Actaea", "racemosa"))));
        List<String> remarks = new ArrayList<>();
        AuditSums sums = Audit.run(
                catalog.view(),
                catalog.names(),
                OlderNames.shipped(),
                plant -> plant.remarks().stream()
                        .filter(remark -> remark.kind() == PlantAudit.Kind.NAME)
                        .map(remark -> remark.problem().details())
                        .forEach(told -> remarks.add(
                                told.get("read") + " -> " + told.get("accepted") + ", " + told.get("source"))));
        assertThat(remarks)
                .containsExactlyInAnyOrder(
                        "Cimicifuga racemosa 'Atropurpurea' -> Actaea racemosa 'Atropurpurea',"
                                + " Iowa State University Extension, 2015",
                        "Cornus stolonifera -> Cornus sericea, USDA PLANTS, state plant list");
        assertThat(sums.byKind()).containsEntry(PlantAudit.Kind.NAME, 2);
    }

    @Test
    void scoresAPlantHigherWhenItsGapIsFilled() {
        PlantAudit before = Audit.of(red(), catalog.names(), OlderNames.shipped());
        catalog.apply(Drafts.plan(catalog, plant(RED_MAPLE, fact(Attributes.EXPOSURE, "full sun"))));
        assertThat(Audit.of(red(), catalog.names(), OlderNames.shipped()).score())
                .isGreaterThan(before.score());
    }

    private org.benchleaf.catalog.model.PlantRecord red() {
        return catalog.names().byName(RED_MAPLE).flatMap(catalog.view()::plant).orElseThrow();
    }
}
