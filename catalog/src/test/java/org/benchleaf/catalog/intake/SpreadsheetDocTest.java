package org.benchleaf.catalog.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.shared.Problem;
import org.junit.jupiter.api.Test;

/// docs/spreadsheet.md says what the program does, and says it of every column.
class SpreadsheetDocTest {
    private record Line(String holds, String accepted, String example) {}

    /// The lines of a table below a title, by heading.
    private static Map<String, Line> table(String title) throws IOException {
        String text = Files.readString(Path.of("../docs/spreadsheet.md"));
        String below = text.substring(text.indexOf("## " + title + "\n") + 4);
        int end = below.indexOf("\n## ");
        Map<String, Line> lines = new LinkedHashMap<>();
        below.substring(0, end < 0 ? below.length() : end)
                .lines()
                .filter(line -> line.startsWith("| `"))
                .map(line ->
                        Arrays.stream(line.split("\\|", -1)).map(String::strip).toList())
                .forEach(cells -> lines.put(
                        cells.get(1).replace("`", ""),
                        new Line(cells.get(2), cells.get(3), cells.get(4).replace("`", ""))));
        return lines;
    }

    @Test
    void namesEveryColumnOfPlantsInTheirOrder() throws IOException {
        assertThat(List.copyOf(table("Plants").keySet()))
                .isEqualTo(ColumnMaps.ownPlants().columns().stream()
                        .map(Column::heading)
                        .toList());
        assertThat(table("Plants").values()).noneMatch(line -> line.holds().isEmpty());
    }

    @Test
    void namesEveryColumnOfStockInTheirOrder() throws IOException {
        assertThat(List.copyOf(table("Stock").keySet()))
                .isEqualTo(ColumnMaps.ownStock().columns().stream()
                        .map(Column::heading)
                        .toList());
    }

    @Test
    void listsEveryAcceptedWordAndGivesExamplesThatAreRead() throws IOException {
        Map<String, Line> lines = table("Plants");
        for (Attribute<?> attribute : Attributes.all()) {
            Line line = Optional.ofNullable(lines.get(attribute.id())).orElseThrow();
            assertThat(attribute.codec().read(line.example()).refusal())
                    .as(attribute.id())
                    .isEmpty();
            attribute
                    .codec()
                    .read("no such word")
                    .refusal()
                    .map(Problem::details)
                    .map(details -> details.get("accepted"))
                    .ifPresent(accepted ->
                            assertThat(line.accepted()).as(attribute.id()).isEqualTo(accepted));
        }
    }

    @Test
    void givesExamplesOfPlantsAndStockThatImportWithoutFindings() throws IOException {
        MemoryBook book = new MemoryBook().apply(Planned.plants(new MemoryBook(), "name", "Acer rubrum"));
        assertThat(plan(table("Plants"), ColumnMaps.ownPlants(), book).findings())
                .isEmpty();
        assertThat(plan(table("Stock"), ColumnMaps.ownStock(), book).findings()).isEmpty();
    }

    private static ImportPlan plan(Map<String, Line> table, ColumnMap map, MemoryBook book) {
        String headings = String.join("|", table.keySet());
        String row = String.join("|", table.values().stream().map(Line::example).toList());
        return Planned.plan(map, book, headings, row);
    }

    @Test
    void namesEveryMemberOfAColumnMap() throws IOException {
        String text = Files.readString(Path.of("../docs/spreadsheet.md"));
        for (String member : List.of(
                "id",
                "rows",
                "rank",
                "source",
                "columns",
                "passedOver",
                "heading",
                "headings",
                "field",
                "required",
                "unit",
                "language",
                "join",
                "words",
                "cases",
                "everyCase",
                "approximation")) {
            assertThat(text).contains("`" + member + "`");
        }
    }
}
