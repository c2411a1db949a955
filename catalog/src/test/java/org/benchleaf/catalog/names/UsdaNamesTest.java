package org.benchleaf.catalog.names;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.benchleaf.shared.name.BotanicalName;
import org.junit.jupiter.api.Test;

/// Every name of the 2,162 taxa with characteristics in USDA PLANTS (USDA, NRCS, The PLANTS Database, National
/// Plant Data Team, Greensboro NC; free for any use). Runs where the environment variable BENCHLEAF_OPEN_DATA
/// names the folder of usda-plants-characteristics.csv.
class UsdaNamesTest {
    @Test
    void readsEveryNameAsATaxonAndLeavesNothingOver() throws IOException {
        String folder = System.getenv().getOrDefault("BENCHLEAF_OPEN_DATA", "");
        Path file = Path.of(folder, "usda-plants-characteristics.csv");
        assumeThat(!folder.isEmpty() && Files.exists(file)).isTrue();

        List<String> wrong = new ArrayList<>();
        try (CsvReader<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(file)) {
            for (NamedCsvRecord row : rows) {
                String text = row.getField("scientific_name");
                if (!(NameReader.read(text) instanceof NameReading.Read(BotanicalName name, List<NameNote> notes))
                        || name.species().isEmpty()
                        || name.cultivar().isPresent()
                        || name.tradeDesignation().isPresent()
                        || name.group().isPresent()
                        || name.infraspecific().isPresent()
                                == row.getField("rank").equals("Species")
                        || notes.stream().anyMatch(note -> note.kind().guess())) {
                    wrong.add(text + " -> " + NameReader.read(text));
                }
            }
        }
        assertThat(wrong).isEmpty();
    }
}
