package org.benchleaf.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/// Every document at once, to be looked at: what cannot be printed holds nothing else up.
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ContactSheetTest {
    private Path sheets = Path.of("");
    private Run run = new Run(0, "", "");

    @BeforeAll
    void printAll(@TempDir Path folder) throws IOException {
        Path shop = folder.resolve("shop");
        sheets = folder.resolve("sheets");
        Run.benchleaf("new", shop.toString(), "--shop", "Test nursery");
        // no font of ours has Chinese characters
        load(folder, shop, """
                key,name,common_names,height,source
                XKRH0DX,Clethra alnifolia,summersweet,4-8 ft,from memory
                P1BXYG7,Itea virginica,Virginia sweetspire 鼠刺,3-5 ft,from memory
                """);
        load(folder, shop, """
                lot,name,size,price,count,place,seen_on
                L1,Clethra alnifolia,#3,21.50,3,B4-12,2026-11-20
                L2,Itea virginica,#3,19.00,2,B4-2,2026-11-20
                """);
        run = Run.benchleaf("print", "contact-sheet", "-o", sheets.toString(), "--workspace", shop.toString());
    }

    private static void load(Path folder, Path shop, String text) throws IOException {
        Path file = Files.writeString(folder.resolve("list.csv"), text);
        assertThat(Run.benchleaf("load", file.toString(), "--workspace", shop.toString())
                        .code())
                .isLessThan(2);
    }

    @Test
    void whatCannotBePrintedIsToldByNameAndTheRestIsPrinted() {
        assertThat(run.code()).isEqualTo(ErrorReport.FINDINGS);
        assertThat(run.out()).contains("card-a6.pdf: 2", "sheet-letter.pdf: 1", "availability-a4-fr.pdf: 1");
        assertThat(run.out().lines().filter(line -> line.contains("card-a6.pdf") && line.contains("Itea virginica")))
                .hasSize(2);
        // plants are compared as a whole or not at all
        assertThat(sheets.resolve("comparison-2-letter-en.pdf")).doesNotExist();
    }

    @Test
    void onlyDocumentsThatNeedAllPlantsAreMissing() throws IOException {
        try (Stream<Path> files = Files.list(sheets)) {
            List<String> kinds = files.map(file -> file.getFileName().toString().split("[-.]")[0])
                    .distinct()
                    .sorted()
                    .toList();
            assertThat(kinds).containsExactly("availability", "card", "labels", "palette", "sheet");
        }
    }
}
