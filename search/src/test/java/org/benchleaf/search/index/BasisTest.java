package org.benchleaf.search.index;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.search.RandomWorld;
import org.junit.jupiter.api.Test;

class BasisTest {
    @Test
    void givesBackTheFactsItWasMadeFrom() {
        RandomWorld world = new RandomWorld(11);
        for (int serial = 0; serial < 200; serial++) {
            PlantRecord plant = world.plant(serial);
            for (Basis basis : Basis.values()) {
                Optional<String> text = basis.textOf(plant, new FactTexts());
                text.map(basis::read)
                        .ifPresent(known -> known.facts()
                                .all()
                                .forEach(fact -> assertThat(plant.facts().value(fact.attribute()))
                                        .as("%s", basis)
                                        .hasValueSatisfying(value ->
                                                assertThat((Object) value).isEqualTo(fact.value()))));
            }
        }
    }
}
