package org.benchleaf.catalog.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/// The whole file of USDA PLANTS characteristics. Runs where the environment variable BENCHLEAF_OPEN_DATA names the
/// folder of usda-plants-characteristics.csv.
class UsdaFileTest {
    @Test
    void accountsForEveryRow() {
        String folder = System.getenv().getOrDefault("BENCHLEAF_OPEN_DATA", "");
        Path file = Path.of(folder, "usda-plants-characteristics.csv");
        assumeThat(!folder.isEmpty() && Files.exists(file)).isTrue();

        ImportPlan plan;
        try (Sheet sheet = SheetReader.open(file)) {
            plan = ImportPlanner.plan(sheet, ColumnMaps.usdaCharacteristics(), new MemoryBook());
        }
        Map<String, Long> findings = plan.findings().stream()
                .collect(Collectors.groupingBy(
                        finding -> finding.problem().key() + " " + finding.outcome(),
                        TreeMap::new,
                        Collectors.counting()));

        assertThat(plan.rows()).isEqualTo(2162);
        assertThat(plan.plants()).hasSize(2162);
        assertThat(plan.rowsLeftOut()).isZero();
        // Counted in the file with another program: rows with one pH alone 2, biennials 4, one pH below 3, annuals with
        // a lowest temperature 137, evergreen conifers without leaves 5, vines below 3 ft 41
        assertThat(findings)
                .containsExactly(
                        Map.entry("cell.half CELL_LEFT_OUT", 2L),
                        Map.entry("cell.no-case CELL_LEFT_OUT", 4L),
                        Map.entry("column.approximate KEPT", 1L),
                        Map.entry("foliage.conifer CELL_LEFT_OUT", 5L),
                        Map.entry("hardiness.annual CELL_LEFT_OUT", 137L),
                        Map.entry("hardiness.native CELL_LEFT_OUT", 34L),
                        Map.entry("height.vine CELL_LEFT_OUT", 15L),
                        Map.entry("height.vine KEPT", 26L),
                        Map.entry("ph.unknown CELL_LEFT_OUT", 1L));
    }
}
