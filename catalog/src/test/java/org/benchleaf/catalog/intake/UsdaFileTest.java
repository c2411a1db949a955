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
        long start = System.nanoTime();
        try (Sheet sheet = SheetReader.open(file)) {
            plan = ImportPlanner.plan(sheet, ColumnMaps.usdaCharacteristics(), new MemoryBook());
        }
        System.out.println((System.nanoTime() - start) / 1000000 + " ms");
        Map<String, Long> byKey = plan.findings().stream()
                .collect(Collectors.groupingBy(
                        finding -> finding.problem().key() + " " + finding.outcome(), TreeMap::new, Collectors.counting()));
        System.out.println(plan.rows() + " " + plan.plants().size() + " " + plan.rowsLeftOut() + " " + byKey);
        plan.findings().stream()
                .collect(Collectors.groupingBy(f -> f.problem().key(), TreeMap::new, Collectors.toList()))
                .forEach((k, v) -> v.stream().limit(12).forEach(f -> System.out.println(f)));
        Map<String, Long> facts = plan.plants().stream()
                .flatMap(p -> p.facts().stream())
                .collect(Collectors.groupingBy(f -> f.attribute().id(), TreeMap::new, Collectors.counting()));
        System.out.println(facts);
        plan.plants().stream().limit(3).forEach(System.out::println);
        assertThat(plan.rows()).isEqualTo(2162);
        assertThat(plan.plants().size() + plan.rowsLeftOut()).isEqualTo(plan.rows());
    }
}
