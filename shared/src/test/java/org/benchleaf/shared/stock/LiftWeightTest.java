package org.benchleaf.shared.stock;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LiftWeightTest {
    // root-ball weights of a grower, bluegrassfarms.net/faq: deciduous 1.5-1.75 in, 2, 2.5, 3 in; conifers 5 to 9 ft
    @ParameterizedTest
    @CsvSource({"24, 325", "28, 550", "32, 750", "32, 700", "36, 1150"})
    void ballsWeighWithinAFifthOfAGrowersTable(int diameterInches, int pounds) {
        assertThat((double) LiftWeight.ofBall(diameterInches).pounds())
                .isCloseTo(pounds, Percentage.withPercentage(20));
    }

    // ANSI Z60.1: ball of 24 in for 2 in caliper, 32 in for 3 in, 42 in for 4 in (promisekit.org copy); 20 in for a
    // conifer of 5-6 ft (from memory)
    @ParameterizedTest
    @CsvSource({"2 in cal B&B, 24", "3 in cal B&B, 32", "4 in cal B&B, 42", "5-6 ft B&B, 20"})
    void standardAsksALeastBallForASize(String size, int inches) {
        assertThat(LiftWeight.ballInches(StockSize.read(size).orThrow())).contains(inches);
    }

    @ParameterizedTest
    @ValueSource(strings = {"2 in cal B&B", "5-6 ft B&B", "#15", "#25"})
    void ballsAndLargeContainersAreMoreThanOnePersonShouldLift(String size) {
        assertThat(LiftWeight.of(StockSize.read(size).orThrow())).hasValueSatisfying(weight -> {
            assertThat(weight.isHeavy()).isTrue();
            assertThat(weight.pounds() % 25).isZero();
        });
    }

    @Test
    void smallContainersAreNot() {
        assertThat(LiftWeight.of(StockSize.read("#3").orThrow()))
                .hasValueSatisfying(weight -> assertThat(weight.isHeavy()).isFalse());
    }

    @Test
    void bareRootsAndPotsByDiameterHaveNoEstimate() {
        assertThat(LiftWeight.of(StockSize.read("2 in cal bare root").orThrow()))
                .isEmpty();
        assertThat(LiftWeight.of(StockSize.read("19 cm").orThrow())).isEmpty();
    }
}
