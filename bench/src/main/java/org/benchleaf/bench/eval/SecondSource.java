package org.benchleaf.bench.eval;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.shared.name.BotanicalName;

/// A published table of many species beside the lists: no list names every plant that serves, and this says of
/// others whether they do.
///
/// @param rows by genus and epithet
record SecondSource(Map<String, Map<String, String>> rows) {
    static final SecondSource NONE = new SecondSource(Map.of());

    /// @param table with a column `scientific_name`
    static SecondSource read(Path table) throws IOException {
        Map<String, Map<String, String>> rows = new HashMap<>();
        for (Map<String, String> row : Table.read(table)) {
            Taxon.of(Cells.of(row, "scientific_name"))
                    .filter(taxon -> taxon.name().species().isPresent())
                    .ifPresent(taxon -> rows.putIfAbsent(key(taxon.name()), row));
        }
        return new SecondSource(rows);
    }

    /// Whether a plant serves, by this table.
    ///
    /// @param check `column:words that say yes:words that say no`, words parted by `|`; `column~word` asks whether
    ///     a
    ///     list holds the word; empty for what the table does not tell
    Optional<Boolean> says(String check, PlantRecord plant, PlantNames names) {
        if (check.isEmpty()) {
            return Optional.empty();
        }
        return names.of(plant).stream()
                .filter(name -> rows.containsKey(key(name)))
                .findFirst()
                .flatMap(name -> says(check, rows.getOrDefault(key(name), Map.of())));
    }

    private static Optional<Boolean> says(String check, Map<String, String> row) {
        int tilde = check.indexOf('~');
        if (tilde > 0) {
            List<String> words =
                    List.of(Cells.of(row, check.substring(0, tilde)).split(" "));
            return words.equals(List.of(""))
                    ? Optional.empty()
                    : Optional.of(words.contains(check.substring(tilde + 1)));
        }
        String[] parts = check.split(":", -1);
        String cell = Cells.of(row, parts[0]);
        return holds(parts[1], cell)
                ? Optional.of(true)
                : holds(parts[2], cell) ? Optional.of(false) : Optional.empty();
    }

    private static boolean holds(String words, String cell) {
        return Arrays.asList(words.split("\\|")).contains(cell);
    }

    private static String key(BotanicalName name) {
        return name.genus() + " "
                + name.species().map(epithet -> epithet.text()).orElse("");
    }
}
