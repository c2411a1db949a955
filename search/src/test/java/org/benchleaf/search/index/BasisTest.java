package org.benchleaf.search.index;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.search.Plants;
import org.benchleaf.search.RandomWorld;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.plant.KnownFor;
import org.benchleaf.shared.site.Exposure;
import org.junit.jupiter.api.Test;

class BasisTest {
    @Test
    void givesBackTheFactsItWasMadeFrom() {
        RandomWorld world = new RandomWorld(11);
        for (int serial = 0; serial < 200; serial++) {
            PlantRecord plant = world.plant(serial);
            for (Basis basis : Basis.values()) {
                Optional<String> text = basis.textOf(plant);
                text.map(basis::read)
                        .ifPresent(known -> known.facts().all().forEach(fact -> check(plant, basis, fact)));
            }
        }
    }

    private static void check(PlantRecord plant, Basis basis, Fact<?> fact) {
        if (fact.attribute().equals(Attributes.KNOWN_FOR)) {
            // of what a plant is known for, only what a wish of this kind asks about
            Set<KnownFor> all = plant.facts().value(Attributes.KNOWN_FOR).orElseThrow();
            Set<?> kept = (Set<?>) fact.value();
            assertThat(all.stream().map(Object.class::cast)).as("%s", basis).containsAll(kept);
            return;
        }
        assertThat(plant.facts().value(fact.attribute()))
                .as("%s", basis)
                .hasValueSatisfying(value -> assertThat((Object) value).isEqualTo(fact.value()));
    }

    @Test
    void keepsWhatAPlantIsKnownForWhereAWishAsksForIt() {
        PlantRecord plant = Plants.plant(
                1,
                Plants.name("Itea", "virginica"),
                Facts.of(List.of(
                        fact(Attributes.EXPOSURE, Set.of(Exposure.PART_SHADE)),
                        fact(Attributes.KNOWN_FOR, Set.of(KnownFor.SHADE, KnownFor.FALL_COLOR)))),
                List.of(),
                List.of());
        String text = Basis.EXPOSURE.textOf(plant).orElseThrow();
        assertThat(Basis.EXPOSURE.read(text).facts().value(Attributes.KNOWN_FOR))
                .contains(Set.of(KnownFor.SHADE));
    }

    private static <T> Fact<T> fact(Attribute<T> attribute, T value) {
        return new Fact<>(attribute, value, new Source("a test"), false);
    }
}
