package org.benchleaf.catalog.intake;

import java.nio.charset.StandardCharsets;
import java.util.List;

/// Short ways to plan a few rows and to tell their findings.
final class Planned {
    private Planned() {}

    static ImportPlan plants(MemoryBook book, String... lines) {
        return plan(ColumnMaps.ownPlants(), book, lines);
    }

    static ImportPlan stock(MemoryBook book, String... lines) {
        return plan(ColumnMaps.ownStock(), book, lines);
    }

    static ImportPlan plan(ColumnMap map, MemoryBook book, String... lines) {
        return plan(map, book, ShopHabits.NONE, lines);
    }

    static ImportPlan plan(ColumnMap map, MemoryBook book, ShopHabits habits, String... lines) {
        byte[] bytes = String.join("\n", lines).getBytes(StandardCharsets.UTF_8);
        try (Sheet sheet = SheetReader.open("list.csv", bytes)) {
            return ImportPlanner.plan(sheet, map, book, habits, count -> {});
        }
    }

    /// `2 hardiness zone.unknown CELL_LEFT_OUT`
    static List<String> findings(ImportPlan plan) {
        return plan.findings().stream()
                .map(finding -> finding.place().row() + " "
                        + finding.place().column().orElse("-") + " "
                        + finding.problem().key() + " "
                        + finding.outcome())
                .toList();
    }
}
