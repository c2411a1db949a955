package org.benchleaf.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.benchleaf.catalog.intake.ColumnMaps;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.catalog.intake.ImportPlanner;
import org.benchleaf.catalog.intake.Sheet;
import org.benchleaf.catalog.intake.SheetReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// A list far longer than the memory that reads it; `bench/run import 200000` does the same with ten
/// times the rows.
class LongListTest {
    private static final int ROWS = 20_000;

    @Test
    void loadsInLittleMemory(@TempDir Path folder) throws IOException, InterruptedException {
        Process child = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx32m",
                        "-XX:+UseSerialGC",
                        "--enable-native-access=ALL-UNNAMED",
                        "-cp",
                        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                        Loader.class.getName(),
                        folder.toString())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("said.txt").toFile())
                .start();
        assertThat(child.waitFor(10, TimeUnit.MINUTES)).isTrue();
        assertThat(Files.readString(folder.resolve("said.txt")).strip())
                .isEqualTo("20000 plants, 20000 findings; 20000 new; state 1, then 1; undone 20000");
    }

    /// The child: makes the list, previews, loads, loads again, takes back.
    static final class Loader {
        private Loader() {}

        public static void main(String[] arguments) throws IOException {
            Path folder = Path.of(arguments[0]);
            Path list = folder.resolve("plants.csv");
            try (Writer out = Files.newBufferedWriter(list, StandardCharsets.UTF_8)) {
                out.write("name,height,description,deer\n");
                for (int row = 0; row < ROWS; row++) {
                    // a deer rating nobody knows: a finding in every row
                    out.write("Acer rubrum 'Made Up %s',40-60 ft,\"%s\",%s%n"
                            .formatted(word(row), "a tall tree of wet woods, ".repeat(8) + row, "eaten"));
                }
            }
            try (Catalog catalog = Catalog.create(folder.resolve("catalog.db"))) {
                ImportPlan plan = plan(list, catalog);
                ImportDiff diff = catalog.rehearse(plan, 10);
                CatalogRevision loaded = catalog.apply(plan);
                CatalogRevision again = catalog.apply(plan(list, catalog));
                UndoneImport undone = catalog.undo();
                System.out.println(plan.plants().size() + " plants, "
                        + plan.findings().size() + " findings; " + diff.newPlants() + " new; state " + loaded.number()
                        + ", then " + again.number() + "; undone " + undone.plantsTakenOut());
            }
        }

        private static String word(int number) {
            StringBuilder word = new StringBuilder();
            for (int rest = number + 26; rest > 0; rest /= 26) {
                word.append((char) ('a' + rest % 26));
            }
            return Character.toUpperCase(word.charAt(0)) + word.substring(1);
        }

        private static ImportPlan plan(Path list, Catalog catalog) {
            try (Sheet sheet = SheetReader.open(list)) {
                return ImportPlanner.plan(sheet, ColumnMaps.ownPlants(), catalog.names());
            }
        }
    }
}
