package org.benchleaf.search.index;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.benchleaf.search.Plants.NOW;
import static org.benchleaf.search.Plants.facts;
import static org.benchleaf.search.Plants.name;
import static org.benchleaf.search.Plants.plant;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.store.FSDirectory;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.search.InMemoryCatalogView;
import org.benchleaf.search.RandomWorld;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.need.Need;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.site.Exposure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlantIndexTest {
    private static final Need SHADE = Need.of(new Wish.GrowsIn(Exposure.FULL_SHADE));

    @TempDir
    Path folder;

    private final InMemoryCatalogView catalog = catalog();

    private static InMemoryCatalogView catalog() {
        InMemoryCatalogView catalog = new InMemoryCatalogView();
        catalog.put(plant(1, name("Itea", "virginica"), facts("exposure", "part shade; full shade")));
        catalog.put(plant(2, name("Rosa", "rugosa"), facts("exposure", "full sun")));
        return catalog;
    }

    private static List<PlantKey> best(PlantIndex index) {
        return index.propose(SHADE, "", Set.of(), NOW, 10).best();
    }

    private List<PlantKey> openedAndClosed() {
        try (PlantIndex index = PlantIndex.open(folder, catalog)) {
            return best(index);
        }
    }

    private List<Path> buildings() throws IOException {
        return new IndexFolder(folder).buildings();
    }

    @Test
    void keepsWhatItBuiltForTheNextTime() throws IOException {
        List<PlantKey> first = openedAndClosed();
        List<Path> built = buildings();

        assertThat(openedAndClosed()).isEqualTo(first).hasSize(2);
        assertThat(buildings()).isEqualTo(built).hasSize(1);
    }

    @Test
    void catchesUpWithWhatChangedWhileItWasClosed() {
        openedAndClosed();
        catalog.put(plant(3, name("Acer", "rubrum"), facts("exposure", "full shade")));
        catalog.retire(PlantKey.ofSerial(1));

        assertThat(openedAndClosed()).containsExactly(PlantKey.ofSerial(3), PlantKey.ofSerial(2));
    }

    @Test
    void buildsAnewWhenAnyOfItsFilesIsCutShort() throws IOException {
        List<PlantKey> whole = openedAndClosed();
        List<String> files;
        try (Stream<Path> inside = Files.list(buildings().getFirst())) {
            files = inside.map(file -> file.getFileName().toString())
                    .filter(file -> !file.equals("write.lock"))
                    .toList();
        }
        assertThat(files).isNotEmpty();
        for (int victim = 0; victim < files.size(); victim++) {
            Path building = buildings().getFirst();
            try (Stream<Path> inside = Files.list(building)) {
                // files are named anew by each build, but in the same number and order of kinds
                List<Path> now = inside.filter(file -> !file.endsWith("write.lock"))
                        .sorted()
                        .toList();
                Path file = now.get(victim % now.size());
                byte[] bytes = Files.readAllBytes(file);
                Files.write(file, java.util.Arrays.copyOf(bytes, bytes.length / 2));
            }
            assertThat(openedAndClosed()).as("cut short: %s", victim).isEqualTo(whole);
            assertThat(buildings()).doesNotContain(building);
        }
    }

    @Test
    void buildsAnewWhenABitIsWrong() throws IOException {
        List<PlantKey> whole = openedAndClosed();
        Path building = buildings().getFirst();
        try (Stream<Path> inside = Files.list(building)) {
            Path largest = inside.max(java.util.Comparator.comparingLong(
                            file -> file.toFile().length()))
                    .orElseThrow();
            byte[] bytes = Files.readAllBytes(largest);
            bytes[bytes.length / 2] ^= 1;
            Files.write(largest, bytes);
        }

        assertThat(openedAndClosed()).isEqualTo(whole);
        assertThat(buildings()).doesNotContain(building);
    }

    @Test
    void buildsAnewWhenTheFormatIsAnother() throws IOException {
        openedAndClosed();
        Path building = buildings().getFirst();
        try (FSDirectory directory = FSDirectory.open(building);
                IndexWriter writer = new IndexWriter(directory, new IndexWriterConfig())) {
            writer.setLiveCommitData(
                    Map.of("benchleaf.format", "0", "benchleaf.revision", "1").entrySet());
            writer.commit();
        }

        assertThat(openedAndClosed()).hasSize(2);
        assertThat(buildings()).doesNotContain(building);
    }

    @Test
    void buildsAnewWhenItIsAheadOfARestoredCatalog() throws IOException {
        catalog.put(plant(3, name("Acer", "rubrum"), facts("exposure", "full shade")));
        openedAndClosed();
        Path building = buildings().getFirst();
        InMemoryCatalogView restored = catalog();

        try (PlantIndex index = PlantIndex.open(folder, restored)) {
            assertThat(best(index)).hasSize(2);
            assertThat(index.revision()).isEqualTo(restored.revision());
        }
        assertThat(buildings()).doesNotContain(building);
    }

    @Test
    void isBuiltInMemoryWhileAnotherProgramHoldsTheFolder() {
        try (PlantIndex holder = PlantIndex.open(folder, catalog);
                PlantIndex second = PlantIndex.open(folder, catalog)) {
            assertThat(best(second)).isEqualTo(best(holder));
        }
    }

    @Test
    void catchesUpWithPlantsAndForgetsThoseRetired() {
        try (PlantIndex index = PlantIndex.open(folder, catalog)) {
            CatalogRevision before = index.revision();
            catalog.put(plant(2, name("Rosa", "rugosa"), facts("exposure", "full shade")));
            catalog.retire(PlantKey.ofSerial(1));
            assertThat(best(index)).hasSize(2);

            assertThat(index.catchUp()).isEqualTo(catalog.revision()).isGreaterThan(before);
            assertThat(best(index)).containsExactly(PlantKey.ofSerial(2));
            assertThat(index.revision()).isEqualTo(catalog.revision());
        }
    }

    @Test
    void keepsAnsweringWhileItIsBuiltAnewAndCatchesUp() throws Exception {
        RandomWorld world = new RandomWorld(9);
        InMemoryCatalogView large = world.catalog(500);
        try (PlantIndex index = PlantIndex.open(folder, large);
                ExecutorService askers = Executors.newFixedThreadPool(2)) {
            List<Future<Integer>> asked = Stream.generate(() -> askers.submit(() -> {
                        int answers = 0;
                        for (int i = 0; i < 200; i++) {
                            answers += index.propose(SHADE, "", Set.of(), NOW, 5)
                                    .best()
                                    .size();
                        }
                        return answers;
                    }))
                    .limit(2)
                    .toList();
            for (int round = 0; round < 3; round++) {
                large.put(world.plant(round));
                large.put(world.stock(round + 7));
                index.catchUp();
                index.rebuild();
            }
            for (Future<Integer> answers : asked) {
                assertThat(answers.get()).isEqualTo(1000);
            }
            assertThat(buildings()).hasSize(1);
        }
    }

    @Test
    void saysSoWhenAskedAfterItWasClosed() {
        PlantIndex index = PlantIndex.open(folder, catalog);
        index.close();
        assertThatThrownBy(() -> best(index))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("the index is closed");
    }
}
