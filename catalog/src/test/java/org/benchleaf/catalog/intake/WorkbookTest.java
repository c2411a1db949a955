package org.benchleaf.catalog.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.benchleaf.catalog.intake.Planned.findings;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.fact.Source;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;

/// Workbooks, one of them saved by LibreOffice.
class WorkbookTest {
    private static final Path NORTHGATE = Path.of("src/test/resources/org/benchleaf/catalog/intake/northgate.xlsx");
    private static final Source LIST = new Source("northgate.xlsx");

    private static ImportPlan plan(String sheet, MemoryBook book) {
        ColumnMap map;
        try (Sheet rows = SheetReader.open(NORTHGATE, Optional.of(sheet))) {
            List<List<String>> sample = rows.rows().map(RawRow::cells).toList();
            map = MapProposal.of("northgate", rows.headings(), sample, LIST);
        }
        try (Sheet rows = SheetReader.open(NORTHGATE, Optional.of(sheet))) {
            return ImportPlanner.plan(rows, map, book);
        }
    }

    private static byte[] workbook(Consumer<Worksheet> fill) {
        try {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            Workbook workbook = new Workbook(bytes, "test", "1.0");
            fill.accept(workbook.newWorksheet("List"));
            workbook.finish();
            return bytes.toByteArray();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    @Test
    void readsPlantsThatLibreOfficeSavedAndKnowsTheDatesThatWereZones() {
        ImportPlan plan = plan("Plants", new MemoryBook());
        assertThat(plan.plants()).hasSize(3);
        assertThat(plan.findings())
                .filteredOn(finding -> finding.problem().key().equals("cell.date"))
                .extracting(finding -> finding.problem().details().get("meant"))
                .containsExactly("5-9", "3-9");
        assertThat(plan.plants().get(0).facts()).hasSize(3);
    }

    @Test
    void readsStockUnderATitleAndMergedHeadings() {
        MemoryBook book = new MemoryBook().apply(plan("Plants", new MemoryBook()));
        ImportPlan plan = plan("Stock", book);
        assertThat(findings(plan))
                .containsExactlyInAnyOrder(
                        "1 - heading.title KEPT",
                        "3 - heading.merged KEPT",
                        "5 UPC gtin.zeros KEPT",
                        "6 Qty cell.formula KEPT",
                        "8 - row.duplicate PASSED_OVER",
                        "9 - row.total PASSED_OVER");
        assertThat(plan.rows()).isEqualTo(3);
        assertThat(plan.lots()).extracting(LotDraft::count).containsExactly(40, 35, 120);
        assertThat(plan.lots().get(0).gtin().map(Object::toString)).contains("012345678905");
        assertThat(plan.lots().get(0).seenOn()).contains(LocalDate.of(2026, 11, 18));
        assertThat(plan.lots().get(0).price().map(Object::toString)).contains("45.50 USD");
    }

    @Test
    void saysWhichSheetsThereAre() {
        try (Sheet sheet = SheetReader.open(NORTHGATE)) {
            assertThat(sheet.file()).isEqualTo("northgate.xlsx, Stock");
            assertThat(sheet.findings())
                    .extracting(finding -> finding.problem().key())
                    .contains("file.sheets");
        }
        assertThatThrownBy(() -> SheetReader.open(NORTHGATE, Optional.of("Prices")))
                .isInstanceOfSatisfying(
                        SheetException.class,
                        refused -> assertThat(refused.problem())
                                .isEqualTo(Problem.of("file.sheet", "Prices")
                                        .with("file", "northgate.xlsx")
                                        .with("accepted", "Stock, Plants")));
    }

    @Test
    void tellsHowFarItIsByTheLengthThatTheWorkbookStates() {
        for (String name : List.of("Stock", "Plants")) {
            try (Sheet sheet = SheetReader.open(NORTHGATE, Optional.of(name))) {
                assertThat(sheet.rows().count()).isPositive();
                assertThat(sheet.share()).as(name).hasValue(1);
            }
        }
        byte[] doesNotSay = workbook(rows -> rows.value(0, 0, "name"));
        try (Sheet sheet = SheetReader.open("list.xlsx", doesNotSay)) {
            assertThat(sheet.share()).isEmpty();
        }
    }

    @Test
    void writesNumbersWithoutNoiseAndKeepsZonesThatAreNumbers() {
        byte[] bytes = workbook(sheet -> {
            sheet.value(0, 0, "name");
            sheet.value(0, 1, "hardiness");
            sheet.value(0, 2, "height");
            sheet.value(1, 0, "Acer rubrum");
            sheet.value(1, 1, 6);
            sheet.value(1, 2, 0.1 + 0.2);
        });
        try (Sheet sheet = SheetReader.open("list.xlsx", bytes)) {
            assertThat(sheet.rows().findFirst().orElseThrow().cells()).containsExactly("Acer rubrum", "6", "0.3");
        }
    }

    @Test
    void saysOfADateThatLostItsFormatWhatItWasBefore() {
        // 46151 is 2026-05-09: days since 1899-12-30
        ImportPlan plan = Planned.plants(new MemoryBook(), "name,hardiness", "Acer rubrum,46151");
        assertThat(plan.findings().get(0).problem())
                .isEqualTo(Problem.of("cell.date", "46151").with("meant", "5-9"));
    }

    @Test
    void refusesABrokenWorkbookInItsOwnWords() {
        byte[] bytes = workbook(sheet -> sheet.value(0, 0, "name"));
        for (int length = 5; length < bytes.length; length += Math.max(1, bytes.length / 40)) {
            byte[] cut = java.util.Arrays.copyOf(bytes, length);
            assertThatThrownBy(() -> {
                        try (Sheet sheet = SheetReader.open("list.xlsx", cut)) {
                            sheet.rows().toList();
                        }
                    })
                    .isInstanceOf(SheetException.class);
        }
    }

    @Test
    void readsTheLandscapeTaxaThroughTheirMap() {
        Path file = Path.of("src/test/resources/org/benchleaf/catalog/intake/landscape-taxa.csv");
        try (Sheet sheet = SheetReader.open(file)) {
            ImportPlan plan = ImportPlanner.plan(sheet, ColumnMaps.landscapeTaxa(), new MemoryBook());
            // "Hosta hybrids" and "Hemerocallis hybrids" name no one plant
            assertThat(plan.findings())
                    .filteredOn(finding -> finding.outcome() != Finding.Outcome.KEPT)
                    .extracting(finding -> finding.problem().key())
                    .containsExactly("name.partly", "name.partly");
            assertThat(plan.plants()).hasSize(173);
            PlantDraft fir = plan.plants().get(0);
            assertThat(fir.facts())
                    .anySatisfy(fact -> {
                        assertThat(fact.attribute()).isEqualTo(Attributes.HARDINESS);
                        assertThat(fact.text()).isEqualTo("3-7");
                    })
                    .anySatisfy(fact -> {
                        assertThat(fact.attribute()).isEqualTo(Attributes.EXPOSURE);
                        assertThat(fact.text()).isEqualTo("full sun; part sun; part shade");
                    });
        }
    }
}
