package org.benchleaf.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.benchleaf.search.fit.Candidate;
import org.benchleaf.shared.code.PlantKey;
import org.junit.jupiter.api.Test;

class PlantsAtHandTest {
    private final RandomWorld world = new RandomWorld(3);
    private final InMemoryCatalogView catalog = world.catalog(50);
    private final PlantsAtHand plants = new PlantsAtHand(catalog);

    @Test
    void neverGivesOutWhatChangedMeanwhile() {
        Random random = new Random(3);
        for (int round = 0; round < 500; round++) {
            PlantKey key = PlantKey.ofSerial(random.nextInt(50));
            switch (random.nextInt(3)) {
                case 0 -> catalog.put(world.stock(random.nextInt(50)));
                case 1 -> catalog.put(world.plant(random.nextInt(50)));
                default -> {}
            }
            List<Candidate> read = plants.read(List.of(key));
            assertThat(read).hasSize(1);
            assertThat(read.getFirst().plant()).isEqualTo(catalog.plant(key).orElseThrow());
            assertThat(read.getFirst().stock())
                    .isEqualTo(catalog.stock(List.of(key)).get(key));
        }
    }

    @Test
    void leavesOutWhatDoesNotExistAndKeepsTheOrderAsked() {
        PlantKey none = PlantKey.ofSerial(900);
        List<PlantKey> asked = List.of(PlantKey.ofSerial(7), none, PlantKey.ofSerial(3));
        assertThat(plants.read(asked).stream().map(known -> known.plant().key()))
                .containsExactly(PlantKey.ofSerial(7), PlantKey.ofSerial(3));
    }
}
