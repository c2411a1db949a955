package org.benchleaf.search.names;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.benchleaf.search.InMemoryCatalogView;
import org.benchleaf.search.index.PlantIndex;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class NameRecallTest {
    private static final int FIRST = 5;

    private final InMemoryCatalogView catalog = NameWorld.catalog();
    private PlantIndex index;
    private NameIndex names;

    @BeforeAll
    void open(@TempDir Path folder) {
        index = PlantIndex.open(folder, catalog);
        names = new NameIndex(index);
    }

    @AfterAll
    void close() {
        index.close();
    }

    @ParameterizedTest
    @CsvSource({"misspelt.txt, 300, 0.97", "misheard.txt, 200, 0.90"})
    void findsThePlantMeantAmongTheFirstFive(String file, int atLeast, double share) {
        List<NameWorld.Said> said = NameWorld.Said.read(file);
        assertThat(said).hasSizeGreaterThanOrEqualTo(atLeast);
        for (boolean heldOut : List.of(false, true)) {
            NameWorld.Recall recall = NameWorld.Recall.of(
                    said.stream().filter(one -> one.heldOut() == heldOut).toList(), FIRST, names, catalog);
            assertThat(recall.share())
                    .as("%s, held out %s, missed %s", file, heldOut, recall.missed())
                    .isGreaterThanOrEqualTo(share);
        }
    }

    @ParameterizedTest
    @CsvSource({"misspelt.txt", "misheard.txt"})
    void neverListsAnInexactMatchAboveAnExactOne(String file) {
        for (NameWorld.Said said : NameWorld.Said.read(file)) {
            assertThat(names.find(said.text(), 20).stream().map(NameHit::how).toList())
                    .as(said.text())
                    .isSorted();
        }
    }
}
