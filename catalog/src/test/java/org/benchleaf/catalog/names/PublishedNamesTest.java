package org.benchleaf.catalog.names;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.benchleaf.shared.name.BotanicalName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/// Names as published, each with its parts; the source of each stands in the row (botanical-names.csv).
class PublishedNamesTest {
    static List<NamedCsvRecord> names() throws IOException {
        try (InputStreamReader text = new InputStreamReader(
                        Objects.requireNonNull(PublishedNamesTest.class.getResourceAsStream("botanical-names.csv")),
                        StandardCharsets.UTF_8);
                CsvReader<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(text)) {
            return rows.stream().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("names")
    void readsThePartsAsPublished(NamedCsvRecord row) {
        NameReading reading = NameReader.read(row.getField("input"));
        BotanicalName name = reading.known().orElseThrow();
        String group = row.getField("group_or_grex");
        boolean grex = group.equals("gx");
        String cultivar = row.getField("cultivar_epithet");
        String trade = row.getField("trade_designation");

        assertThat(name.genus()).isEqualTo(row.getField("genus"));
        assertThat(name.species().map(epithet -> epithet.text()).orElse("")).isEqualTo(row.getField("species"));
        assertThat(name.infraspecific().map(below -> below.rank().mark()).orElse(""))
                .isEqualTo(row.getField("rank"));
        assertThat(name.infraspecific().map(below -> below.epithet().text()).orElse(""))
                .isEqualTo(row.getField("infraspecific"));
        assertThat(name.tradeDesignation().orElse("")).isEqualTo(trade);
        if (grex) {
            assertThat(reading.noted(NameNote.Kind.GREX)).containsExactly("gx");
        } else {
            assertThat(name.group().map(text -> text + " Group").orElse("")).isEqualTo(group);
        }
        // Where the cultivar's true epithet does not stand in the text, no reader can know it
        boolean stated = row.getField("input").contains(cultivar);
        assertThat(name.cultivar()).isEqualTo(Optional.of(cultivar).filter(text -> !text.isEmpty() && stated));
        assertMark(row.getField("hybrid_mark"), reading, name);
        boolean whole = row.getField("other").isEmpty() && !grex;
        assertThat(reading instanceof NameReading.Read).isEqualTo(whole);
    }

    private static void assertMark(String mark, NameReading reading, BotanicalName name) {
        switch (mark.toLowerCase(Locale.ROOT)) {
            case "formula" -> assertThat(reading.noted(NameNote.Kind.FORMULA)).hasSize(1);
            case "genus ×", "genus +" ->
                assertThat("genus " + name.genusMark().sign()).isEqualTo(mark);
            case "species ×" ->
                assertThat(name.species().map(epithet -> epithet.mark().sign())).contains("×");
            default -> assertThat(name.genusMark().sign()).isEmpty();
        }
    }
}
