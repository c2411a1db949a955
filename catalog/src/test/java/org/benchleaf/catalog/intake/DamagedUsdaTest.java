package org.benchleaf.catalog.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import de.siegmar.fastcsv.reader.CsvReader;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.catalog.names.NameReader;
import org.benchleaf.shared.name.BotanicalName;
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

    private record Damaged(long row, Damage damage) {
        String told() {
            return row + " " + damage.column() + " " + damage.problem();
        }
    }

    private static List<List<String>> rows(InputStream file) throws IOException {
        try (InputStream content = file) {
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
        List<List<String>> whole = rows(Objects.requireNonNull(DamagedUsdaTest.class.getResourceAsStream(FILE)));
        assertThat(whole).hasSize(151);
        assertThat(damageAndRead(whole)).hasSize(150);
    }

    /// Runs where the environment variable BENCHLEAF_OPEN_DATA names the folder of usda-plants-characteristics.csv.
    @Test
    void doesSoInTheWholeFileOfUsdaPlants() throws IOException {
        String folder = System.getenv().getOrDefault("BENCHLEAF_OPEN_DATA", "");
        Path file = Path.of(folder, "usda-plants-characteristics.csv");
        assumeThat(!folder.isEmpty() && Files.exists(file)).isTrue();

        List<Damaged> damaged = damageAndRead(rows(Files.newInputStream(file)));

        // 2,162 rows, every fourteenth one with a blank row before it, one repeated, one left alone
        Map<String, Long> planted = damaged.stream()
                .collect(Collectors.groupingBy(cell -> cell.damage().problem(), TreeMap::new, Collectors.counting()));
        assertThat(planted)
                .containsExactly(
                        Map.entry("as it was", 154L),
                        Map.entry("cell.date", 464L),
                        Map.entry("cell.error", 463L),
                        Map.entry("cell.power", 155L),
                        Map.entry("row.blank", 154L),
                        Map.entry("row.duplicate", 154L),
                        Map.entry("term.unknown", 308L),
                        Map.entry("text.lost", 155L),
                        Map.entry("text.mojibake", 155L));
    }

    private static final Damage BLANK = new Damage("", cell -> cell, "row.blank");
    private static final Damage REPEATED = new Damage("", cell -> cell, "row.duplicate");
    private static final Damage NONE = new Damage("", cell -> cell, "as it was");

    private static final List<Damage> TURNS =
            Stream.concat(DAMAGES.stream(), Stream.of(BLANK, REPEATED, NONE)).toList();

    /// Damages row after row in turn, reads the file, and holds what is told against what was done: each damage is
    /// told at its place, no other of its kind is told, and what was not touched is read as before.
    ///
    /// @return what was done, row by row
    private static List<Damaged> damageAndRead(List<List<String>> whole) {
        ImportPlan sound = plan(whole);
        List<String> headings = whole.getFirst();
        List<List<String>> rows = new ArrayList<>(List.of(headings));
        List<Damaged> damaged = new ArrayList<>();
        Set<String> untouched = new HashSet<>();
        for (int at = 1; at < whole.size(); at++) {
            List<String> row = new ArrayList<>(whole.get(at));
            Damage damage = TURNS.get(at % TURNS.size());
            if (damage == BLANK) {
                rows.add(headings.stream().map(heading -> "").toList());
            } else if (damage == REPEATED) {
                rows.add(row);
            }
            if (DAMAGES.contains(damage)) {
                int column = headings.indexOf(damage.column());
                row.set(column, damage.to().apply(row.get(column)));
            } else {
                untouched.add(row.getFirst());
            }
            damaged.add(new Damaged(rows.size() + 1L, damage));
            rows.add(row);
        }
        List<String> total =
                new ArrayList<>(headings.stream().map(heading -> "").toList());
        total.set(0, "Total");
        total.set(headings.indexOf("height_mature_feet"), "4711");
        rows.add(total);

        ImportPlan plan = plan(rows);

        Set<String> kinds = DAMAGES.stream().map(Damage::problem).collect(Collectors.toCollection(HashSet::new));
        kinds.add(REPEATED.problem());
        assertThat(sound.findings())
                .as("the file is sound before")
                .noneMatch(finding -> kinds.contains(finding.problem().key()));
        assertThat(plan.findings().stream()
                        .filter(finding -> kinds.contains(finding.problem().key()))
                        .map(DamagedUsdaTest::told))
                .containsExactlyInAnyOrderElementsOf(damaged.stream()
                        .filter(cell -> kinds.contains(cell.damage().problem()))
                        .map(Damaged::told)
                        .toList());
        assertThat(plan.findings().getLast().problem().key()).isEqualTo("row.total");
        assertReadAsBefore(sound, plan, untouched);
        return damaged;
    }

    private static String told(Finding finding) {
        String column = finding.problem().key().equals(REPEATED.problem())
                ? ""
                : finding.place().column().orElse("");
        return finding.place().row() + " " + column + " " + finding.problem().key();
    }

    private static void assertReadAsBefore(ImportPlan before, ImportPlan after, Set<String> untouched) {
        Map<String, PlantDraft> read = byName(after);
        Set<BotanicalName> names = untouched.stream()
                .flatMap(name -> NameReader.read(name).known().stream())
                .collect(Collectors.toSet());
        List<PlantDraft> known = byName(before).values().stream()
                .filter(draft -> names.contains(draft.name()))
                .toList();
        assertThat(known).hasSameSizeAs(untouched);
        for (PlantDraft draft : known) {
            assertThat(read).containsKey(draft.name().toString());
            assertThat(Optional.ofNullable(read.get(draft.name().toString())).map(PlantDraft::facts))
                    .as("%s", draft.name())
                    .contains(draft.facts());
        }
    }

    private static Map<String, PlantDraft> byName(ImportPlan plan) {
        return plan.plants().stream()
                .collect(Collectors.toMap(draft -> draft.name().toString(), draft -> draft));
    }
}
