package org.benchleaf.catalog.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.shared.fact.Source;

/// Whatever stands in a sheet, reading it ends in a plan or in a refusal of ours.
class IntakeFuzzTest {
    @Provide
    Arbitrary<String> cells() {
        Arbitrary<String> odd = Arbitraries.of(
                "5-9",
                "9-May",
                "2026-05-09",
                "46151",
                "9.45E+12",
                "1E999999999",
                "#REF!",
                "=1+1",
                "'=1",
                "Total",
                "#3",
                "3 gal",
                "18-24\"",
                "2\" cal",
                "1.5m",
                "Acer rubrum",
                "ACER RUBRUM",
                "Acer x",
                "×",
                "+",
                "-",
                "Sp\uFFFDth",
                "SpÃ¤th",
                "\u0000",
                "\u001e",
                "99999999999999999999",
                "-5",
                "0012",
                "\"",
                "'",
                ";",
                ",");
        return Arbitraries.frequencyOf(
                net.jqwik.api.Tuple.of(3, odd),
                net.jqwik.api.Tuple.of(1, Arbitraries.strings().ofMaxLength(40)),
                net.jqwik.api.Tuple.of(1, Arbitraries.just("")));
    }

    @Provide
    Arbitrary<List<List<String>>> tables() {
        return cells().list().ofMinSize(1).ofMaxSize(8).list().ofMinSize(1).ofMaxSize(12);
    }

    @Property(tries = 300)
    void plansAnySheetOfPlantsAndStock(@ForAll("tables") List<List<String>> rows) {
        plan("name,hardiness,height,bloom,native_states,source,fact_sources\n", rows, ColumnMaps.ownPlants());
        plan("lot,name,size,count,price,gtin,ready_week,condition\n", rows, ColumnMaps.ownStock());
    }

    @Property(tries = 300)
    void proposesAMapForAnySheet(@ForAll("tables") List<List<String>> rows) {
        try (Sheet sheet = SheetReader.open("any.csv", text("", rows))) {
            List<List<String>> sample = sheet.rows().map(RawRow::cells).toList();
            ColumnMap map = MapProposal.of("any", sheet.headings(), sample, new Source("any.csv"));
            assertThat(MapFile.read(MapFile.write(map)).refusal()).isEmpty();
        } catch (SheetException refused) {
            assertThat(refused.problem().key()).startsWith("file.");
        }
    }

    @Property(tries = 500)
    void readsAnyTextAsAnyAttributeWithoutAnException(@ForAll("cells") String cell) {
        Attributes.all().forEach(attribute -> attribute.codec().read(cell));
        GtinCells.repaired(cell);
    }

    private static void plan(String headings, List<List<String>> rows, ColumnMap map) {
        try (Sheet sheet = SheetReader.open("any.csv", text(headings, rows))) {
            ImportPlan plan = ImportPlanner.plan(sheet, map, new MemoryBook());
            assertThat(plan.rows()).isLessThanOrEqualTo(rows.size() + 1L);
        } catch (SheetException refused) {
            assertThat(refused.problem().key()).startsWith("file.");
        }
    }

    private static byte[] text(String headings, List<List<String>> rows) {
        StringBuilder text = new StringBuilder(headings);
        for (List<String> row : rows) {
            for (String cell : row) {
                text.append('"').append(cell.replace("\"", "\"\"")).append("\",");
            }
            text.setCharAt(text.length() - 1, '\n');
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }
}
