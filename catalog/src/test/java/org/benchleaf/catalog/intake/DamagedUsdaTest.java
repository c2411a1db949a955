package org.benchleaf.catalog.intake;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.benchleaf.catalog.names.NameReader;
import org.junit.jupiter.api.Test;

/// Rows of USDA PLANTS as a spreadsheet program and a hasty hand would leave them: what was damaged is
/// told with its place, what was not is read as before.
class DamagedUsdaTest {
    private static final String FILE = "usda-excerpt.csv";
    /// What happens to a cell, and what the plan says of it.
    private static final List<Damage> DAMAGES = List.of(
            new Damage("height_mature_feet", cell -> "3-May", "cell.date"),
            new Damage("ph_minimum", cell -> "2026-07-04", "cell.date"),
            new Damage("temperature_minimum_f", cell -> "46151", "cell.date"),
            new Damage("height_mature_feet", cell -> "9.45E+12", "cell.power"),
            new Damage("common_name", cell -> cell + " Ã©rable", "text.mojibake"),
            new Damage("family", cell -> "Sapinda\uFFFDeae", "text.lost"),
            new Damage("growth_rate", cell -> "#REF!", "cell.error"),
            new Damage("native_states", cell -> "#N/A", "cell.error"),
            new Damage("toxicity", cell -> "Slihgt", "term.unknown"),
            new Damage("shade_tolerance", cell -> "1", "term.unknown"),
            new Damage("scientific_name", cell -> "#NAME?", "cell.error"));

    private record Damage(String column, UnaryOperator<String> to, String problem) {}

    private record Damaged(long row, Damage damage) {}

    private static List<List<String>> rows() throws IOException {
        try (InputStream content = Objects.requireNonNull(DamagedUsdaTest.class.getResourceAsStream(FILE))) {
            String text = new String(content.readAllBytes(), StandardCharsets.UTF_8);
            try (var reader = CsvReader.builder().ofCsvRecord(text)) {
                return reader.stream().map(row -> row.getFields()).toList();
            }
        }
    }

    private static ImportPlan plan(List<List<String>> rows) {
        String text = rows.stream()
                .map(row -> row.stream()
                        .map(cell -> '"' + cell.replace("\"", "\"\"") + '"')
                        .collect(Collectors.joining(",")))
                .collect(Collectors.joining("\n"));
        try (Sheet sheet = SheetReader.open(FILE, text.getBytes(StandardCharsets.UTF_8))) {
            return ImportPlanner.plan(sheet, ColumnMaps.usdaCharacteristics(), new MemoryBook());
        }
    }

    @Test
    void tellsEveryDamagedCellAndReadsTheOthersAsBefore() throws IOException {
        List<List<String>> whole = rows();
        Map<String, PlantDraft> before = byName(plan(whole));
        List<String> headings = whole.getFirst();
        List<List<String>> rows = new ArrayList<>(List.of(headings));
        List<Damaged> damaged = new ArrayList<>();
        List<Long> repeated = new ArrayList<>();
        List<String> untouched = new ArrayList<>();
        for (int at = 1; at < whole.size(); at++) {
            List<String> row = new ArrayList<>(whole.get(at));
            int turn = at % (DAMAGES.size() + 3);
            if (turn < DAMAGES.size()) {
                Damage damage = DAMAGES.get(turn);
                int column = headings.indexOf(damage.column());
                row.set(column, damage.to().apply(row.get(column)));
                damaged.add(new Damaged(rows.size() + 1L, damage));
            } else {
                untouched.add(row.getFirst());
                if (turn == DAMAGES.size()) {
                    rows.add(headings.stream().map(heading -> "").toList()); // a blank row
                } else if (turn == DAMAGES.size() + 1) {
                    rows.add(row);
                    repeated.add(rows.size() + 1L);
                }
            }
            rows.add(row);
        }
        List<String> total =
                new ArrayList<>(headings.stream().map(heading -> "").toList());
        total.set(0, "Total");
        total.set(headings.indexOf("height_mature_feet"), "4711");
        rows.add(total);

        ImportPlan plan = plan(rows);

        assertThat(damaged).hasSizeGreaterThan(110);
        for (Damaged cell : damaged) {
            assertThat(plan.findings())
                    .as("row %d, %s", cell.row(), cell.damage())
                    .anySatisfy(finding -> {
                        assertThat(finding.place())
                                .isEqualTo(new Place(
                                        FILE,
                                        cell.row(),
                                        Optional.of(cell.damage().column())));
                        assertThat(finding.problem().key())
                                .isEqualTo(cell.damage().problem());
                    });
        }
        for (long row : repeated) {
            assertThat(plan.findings()).anySatisfy(finding -> {
                assertThat(finding.place().row()).isEqualTo(row);
                assertThat(finding.problem().key()).isEqualTo("row.duplicate");
            });
        }
        assertThat(plan.findings().getLast().problem().key()).isEqualTo("row.total");
        Map<String, PlantDraft> after = byName(plan);
        List<PlantDraft> known = before.values().stream()
                .filter(draft -> untouched.stream()
                        .anyMatch(name -> NameReader.read(name).known().equals(Optional.of(draft.name()))))
                .toList();
        assertThat(known).hasSizeGreaterThan(25);
        for (PlantDraft draft : known) {
            assertThat(after.values()).anySatisfy(read -> {
                assertThat(read.name()).isEqualTo(draft.name());
                assertThat(read.facts()).isEqualTo(draft.facts());
            });
        }
    }

    private static Map<String, PlantDraft> byName(ImportPlan plan) {
        return plan.plants().stream()
                .collect(Collectors.toMap(draft -> draft.name().toString(), draft -> draft));
    }
}
