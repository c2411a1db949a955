package org.benchleaf.catalog.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.names.NameReader;
import org.benchleaf.shared.stock.ContainerNaming;
import org.benchleaf.shared.stock.StockSize;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/// However long a cell is, it is read or refused; what went back over its letters again and again would not end.
class LongInputTest {
    private static final int LETTERS = 200_000;
    /// Longer cells are not read; see docs/spreadsheet.md.
    private static final int LONGEST = 4_000;

    private static String longText(String piece) {
        return piece.repeat(LETTERS / piece.length());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "a",
                " ",
                "9",
                "-",
                "Acer ",
                "Acer rubrum ",
                "A. ",
                "×",
                "'",
                "' '",
                "(",
                "((",
                "subsp. ",
                "1-",
                "5-9 ",
                "Apr-",
                "Apr-Jun; ",
                "1 ft ",
                "#",
                "#FFFFFF; ",
                "red #B8272F; ",
                "US-",
                "NY ",
                ";",
                "=",
                "ft",
                "B&B ",
                "toxic: dogs, ",
                "toxic: dogs - ",
                "Ã",
                "\u0000",
                "\u0301",
                "ﬀ",
                "Group ",
                "cv. ",
                "\"",
                "“",
                "1.5m",
                "'s "
            })
    void readsOrRefusesAnyCell(String piece) {
        String text = longText(piece).substring(0, LONGEST);
        assertThat(NameReader.read(text)).isNotNull();
        for (var attribute : Attributes.all()) {
            assertThat(attribute.codec().read(text)).as(attribute.id()).isNotNull();
        }
        assertThat(StockSize.read(text, ContainerNaming.GALLON)).isNotNull();
        assertThat(GtinCells.repaired(text)).isNotNull();
        assertThat(Mojibake.repaired(text)).isNotNull();
        plan("name,height,bloom,source,fact_sources\n", longText(piece), ColumnMaps.ownPlants());
        plan("lot,name,size,count,price\n", longText(piece), ColumnMaps.ownStock());
    }

    private static void plan(String headings, String cell, ColumnMap map) {
        String quoted = '"' + cell.replace("\"", "\"\"") + '"';
        String sheet = headings + String.join(",", List.of(quoted, quoted, quoted, quoted, quoted)) + "\n";
        try (Sheet rows = SheetReader.open("long.csv", sheet.getBytes(StandardCharsets.UTF_8))) {
            ImportPlanner.plan(rows, map, new MemoryBook());
        } catch (SheetException refused) {
            assertThat(refused.problem().key().toLowerCase(Locale.ROOT)).startsWith("file.");
        }
    }

    @Test
    void saysThatACellIsTooLongToBeMeant() {
        ImportPlan plan = Planned.plants(
                new MemoryBook(), "name,height,description", "Acer rubrum," + longText("40-60 ft ") + ",red");
        assertThat(Planned.findings(plan)).containsExactly("2 height cell.long CELL_LEFT_OUT");
        assertThat(plan.findings().getFirst().problem().details().get("read")).hasSizeLessThan(100);
        ImportPlan name = Planned.plants(new MemoryBook(), "name,height", longText("Acer rubrum ") + ",40-60 ft");
        assertThat(Planned.findings(name))
                .containsExactly("2 name cell.long CELL_LEFT_OUT", "2 name name.empty ROW_LEFT_OUT");
    }
}
