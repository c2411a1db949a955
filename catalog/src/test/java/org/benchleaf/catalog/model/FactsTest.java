package org.benchleaf.catalog.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.benchleaf.shared.fact.Source;
import org.junit.jupiter.api.Test;

class FactsTest {
    private static final Source LIST = new Source("grower's list, 2026");
    private static final Facts HOLLY = Facts.of(List.of(
            fact(Attributes.FRUIT_COLOR, "red"), fact(Attributes.FRUIT, "Oct-Mar"), fact(Attributes.BLOOM, "May")));

    private static <T> Fact<T> fact(Attribute<T> attribute, String text) {
        return new Fact<>(attribute, attribute.codec().read(text).orThrow(), LIST, false);
    }

    @Test
    void takeFromTheSpeciesWhenItFruits() {
        Facts female = Facts.of(List.of(fact(Attributes.FRUIT_COLOR, "orange"))).inheriting(HOLLY);

        assertThat(female.value(Attributes.FRUIT).map(Object::toString)).contains("Oct-Mar");
    }

    @Test
    void takeNoMonthsFromTheSpeciesForWhatThePlantHasNot() {
        Facts male = Facts.of(List.of(fact(Attributes.FRUIT_COLOR, "none"))).inheriting(HOLLY);

        assertThat(male.value(Attributes.FRUIT)).isEmpty();
        assertThat(male.value(Attributes.BLOOM).map(Object::toString)).contains("May");
    }
}
