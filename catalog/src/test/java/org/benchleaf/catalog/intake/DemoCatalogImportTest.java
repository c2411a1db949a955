package org.benchleaf.catalog.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import org.benchleaf.demo.DemoCatalog;
import org.junit.jupiter.api.Test;

class DemoCatalogImportTest {
    @Test
    void importsWithoutAnyFinding() throws IOException {
        MemoryBook book = new MemoryBook();
        List<Finding> findings = new ArrayList<>();
        long plants = 0;
        long lots = 0;
        for (String file : DemoCatalog.plantFiles()) {
            ImportPlan plan = plan(file, ColumnMaps.ownPlants(), book);
            findings.addAll(plan.findings());
            assertThat(plan.plants()).hasSize((int) plan.rows());
            plants += plan.plants().size();
            book.apply(plan);
        }
        for (String file : DemoCatalog.stockFiles()) {
            ImportPlan plan = plan(file, ColumnMaps.ownStock(), book);
            findings.addAll(plan.findings());
            lots += plan.lots().size();
            book.apply(plan);
        }
        assertThat(findings).isEmpty();
        assertThat(plants).isGreaterThan(700);
        assertThat(lots).isGreaterThan(1500);
    }

    private static ImportPlan plan(String file, ColumnMap map, MemoryBook book) throws IOException {
        try (InputStream content = DemoCatalog.open(file);
                Sheet sheet = SheetReader.open(file, content.readAllBytes())) {
            return ImportPlanner.plan(sheet, map, book);
        }
    }
}
