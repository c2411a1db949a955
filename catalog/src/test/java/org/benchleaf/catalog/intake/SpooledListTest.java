package org.benchleaf.catalog.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.demo.DemoCatalog;
import org.benchleaf.shared.Problem;
import org.junit.jupiter.api.Test;

class SpooledListTest {
    private static Finding finding(int number) {
        String text = "ö\u0000" + "é".repeat(number % 7) + number;
        Optional<String> column = number % 3 == 0 ? Optional.empty() : Optional.of("height");
        return new Finding(
                new Place("plants.csv", number, column),
                Problem.of("zone.unknown", text).with("accepted", "1 to 13"),
                Finding.Outcome.values()[number % Finding.Outcome.values().length]);
    }

    @Test
    void givesALongListBackFromDiskAsItWas() {
        List<Finding> all = new ArrayList<>();
        SpooledList.Builder<Finding> builder = new SpooledList.Builder<>(new FindingFormat());
        for (int number = 0; number < 5_321; number++) {
            all.add(finding(number));
            builder.add(finding(number));
        }
        List<Finding> spooled = builder.list();
        assertThat(spooled).isInstanceOf(SpooledList.class).hasSize(5_321).isEqualTo(all);
        assertThat(spooled.get(5_320)).isEqualTo(all.get(5_320));
        assertThat(spooled.get(2_000)).isEqualTo(all.get(2_000));
    }

    @Test
    void keepsAShortListInMemory() {
        SpooledList.Builder<Finding> builder = new SpooledList.Builder<>(new FindingFormat());
        builder.add(finding(1));
        assertThat(builder.list()).isNotInstanceOf(SpooledList.class).containsExactly(finding(1));
    }

    @Test
    void writesEveryPlantAndLotOfTheDemoSoThatItReadsBackEqual() throws IOException {
        MemoryBook book = new MemoryBook();
        for (String file : DemoCatalog.plantFiles()) {
            try (InputStream content = DemoCatalog.open(file);
                    Sheet sheet = SheetReader.open(file, content.readAllBytes())) {
                for (PlantDraft draft :
                        ImportPlanner.plan(sheet, ColumnMaps.ownPlants(), book).plants()) {
                    assertThat(throughDisk(draft, new PlantFormat())).isEqualTo(draft);
                }
            }
        }
        String lots = """
                lot,name,size,form,place,count,ready_week,price,condition,seen_on,gtin
                T1,Acer rubrum,#3,,B4-12,60,2027-W14,21.50,in bud; full,2026-11-18,012345678905
                T2,Acer rubrum,2.5 in cal B&B,multi-stem,,0,,,,,
                T3,Acer rubrum,18-24 in,,,7,,9.5 CAD,,,
                """;
        book.apply(Planned.plants(book, "name", "Acer rubrum"));
        try (Sheet sheet = SheetReader.open("lots.csv", lots.getBytes(StandardCharsets.UTF_8))) {
            List<LotDraft> drafts =
                    ImportPlanner.plan(sheet, ColumnMaps.ownStock(), book).lots();
            assertThat(drafts).hasSize(3);
            for (LotDraft draft : drafts) {
                assertThat(throughDisk(draft, new LotFormat())).isEqualTo(draft);
            }
        }
    }

    private static <T> T throughDisk(T element, SpoolFormat<T> format) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        format.write(element, new DataOutputStream(bytes));
        return format.read(new DataInputStream(new ByteArrayInputStream(bytes.toByteArray())));
    }

    @Test
    void remembersTheFirstNumberOfEachText() {
        TextNumbers numbers = new TextNumbers();
        for (int text = 0; text < 50_000; text++) {
            assertThat(numbers.putIfAbsent("Acer " + text, text)).isEmpty();
        }
        assertThat(numbers.size()).isEqualTo(50_000);
        assertThat(numbers.putIfAbsent("Acer 77", 1)).hasValue(77);
        assertThat(numbers.get("Acer 49999")).hasValue(49_999);
        assertThat(numbers.get("Acer")).isEmpty();
        numbers.put("Acer 77", 2);
        assertThat(numbers.get("Acer 77")).hasValue(2);
    }
}
