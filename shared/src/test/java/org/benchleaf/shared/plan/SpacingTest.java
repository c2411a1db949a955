package org.benchleaf.shared.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.benchleaf.shared.Reading;
import org.benchleaf.shared.plan.Spacing.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class SpacingTest {
    @ParameterizedTest
    @CsvFileSource(resources = "/check-values/plant-spacing.csv", numLinesToSkip = 1)
    void agreesWithTheTables(
            double inches,
            double square,
            double squareHundred,
            double triangular,
            double triangularHundred,
            double rowInches) {
        Spacing squares = Spacing.ofInches(inches, Pattern.SQUARE);
        Spacing triangles = Spacing.ofInches(inches, Pattern.TRIANGULAR);

        assertThat(squares.perSquareFoot()).isCloseTo(square, within(0.00006));
        assertThat(triangles.perSquareFoot()).isCloseTo(triangular, within(0.00006));
        assertThat(squares.perSquareFoot() * 100).isCloseTo(squareHundred, within(0.006));
        assertThat(triangles.perSquareFoot() * 100).isCloseTo(triangularHundred, within(0.006));
        assertThat(triangles.rowCm() / 2.54).isCloseTo(rowInches, within(0.006));
    }

    // worked examples: bloomindesigns.com, scgardenguru.com, erthturf.com (133 and 172.8), wenkegardencenter.com
    // (26.67);
    // where they round down or to the nearest, ours is the next whole plant
    @ParameterizedTest
    @CsvSource({
        "50 sq ft, 12 in, SQUARE, 50",
        "2 x 25 ft, 12 in, SQUARE, 50",
        "24 sq ft, 6 in, SQUARE, 96",
        "300 sq ft, 18 in, SQUARE, 134",
        "120 sq ft, 10 in, SQUARE, 173",
        "60 sq ft, 18 in, SQUARE, 27",
        "100 sq ft, 12 in, TRIANGULAR, 116",
        "10 m2, 50 cm, SQUARE, 40",
        "4 ft 6 in x 12 ft, 9 in, SQUARE, 96"
    })
    void roundsUpToWholePlants(String area, String spacing, Pattern pattern, int plants) {
        assertThat(Spacing.read(spacing, pattern)
                        .orThrow()
                        .plantsFor(BedArea.read(area).orThrow(), 0))
                .isEqualTo(plants);
    }

    @Test
    void addsWhatIsLost() {
        Spacing foot = Spacing.ofInches(12, Pattern.SQUARE);

        assertThat(foot.plantsFor(BedArea.ofSquareFeet(100), 0.05)).isEqualTo(105);
        assertThat(foot.plantsFor(BedArea.ofSquareFeet(10), 0.05)).isEqualTo(11);
    }

    @Test
    void setsAPlantAtEachEndOfARow() {
        Spacing four = Spacing.read("4 ft", Pattern.SQUARE).orThrow();
        Spacing staggered = Spacing.read("4 ft", Pattern.TRIANGULAR).orThrow();
        double sixty = Spacing.readLength("60 ft").orThrow();

        assertThat(four.plantsAlong(sixty, 1, 0)).isEqualTo(16);
        assertThat(four.plantsAlong(sixty, 2, 0)).isEqualTo(32);
        assertThat(staggered.plantsAlong(sixty, 2, 0)).isEqualTo(31);
    }

    @ParameterizedTest
    @CsvSource({"18", "-3 in", "0 in", "in", "500 m"})
    void refusesWhatIsNoSpacing(String text) {
        assertThat(Spacing.read(text, Pattern.SQUARE)).isInstanceOf(Reading.Refused.class);
    }

    @ParameterizedTest
    @CsvSource({"200", "0 sq ft", "x 3 ft", "ten by ten"})
    void refusesWhatIsNoArea(String text) {
        assertThat(BedArea.read(text)).isInstanceOf(Reading.Refused.class);
    }

    @Test
    void holdsNoEmptyAreaOrSpacing() {
        assertThatThrownBy(() -> new BedArea(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Spacing(0, Pattern.SQUARE)).isInstanceOf(IllegalArgumentException.class);
    }
}
