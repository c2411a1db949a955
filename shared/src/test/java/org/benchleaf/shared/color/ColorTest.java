package org.benchleaf.shared.color;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class ColorTest {
    @ParameterizedTest
    @CsvFileSource(resources = "/check-values/ciede2000-pairs.csv", numLinesToSkip = 1)
    void differsAsThePublishedPairsDo(
            int pair, double l1, double a1, double b1, double l2, double a2, double b2, double published) {
        Lab one = new Lab(l1, a1, b1);
        Lab other = new Lab(l2, a2, b2);
        assertThat(one.differenceTo(other)).as("pair %d", pair).isCloseTo(published, within(0.00005));
        assertThat(other.differenceTo(one)).as("pair %d, turned", pair).isCloseTo(published, within(0.00005));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/check-values/wcag-contrast.csv", numLinesToSkip = 1)
    void contrastsAsWcagSays(
            String foreground, String background, double lum1, double lum2, double ratio, String normalText) {
        double contrast = Srgb.read(foreground)
                .orThrow()
                .contrastWith(Srgb.read(background).orThrow());
        assertThat(contrast).isCloseTo(ratio, within(0.005));
        assertThat(contrast >= 4.5).isEqualTo(normalText.equals("pass"));
    }

    // white point and primaries in L*a*b*: IEC 61966-2-1 with D65, computed by hand, from memory to two places
    @ParameterizedTest
    @CsvSource({"#FFFFFF, 100, 0, 0", "#000000, 0, 0, 0", "#FF0000, 53.24, 80.09, 67.20"})
    void putsScreenColorsIntoLab(String hex, double lightness, double a, double b) {
        Lab lab = Srgb.read(hex).orThrow().lab();
        assertThat(lab.lightness()).isCloseTo(lightness, within(0.01));
        assertThat(lab.a()).isCloseTo(a, within(0.02));
        assertThat(lab.b()).isCloseTo(b, within(0.02));
    }

    // which trade word belongs to which family: common practice, no source
    @ParameterizedTest
    @CsvSource({
        "deep red, RED",
        "magenta, PINK",
        "lavender, PURPLE",
        "chartreuse, GREEN",
        "burgundy, RED",
        "blue-green, BLUE_GREEN",
        "light pink, PINK",
        "yellow-green, GREEN"
    })
    void knowsTheFamilyOfTradeWords(String word, ColorFamily family) {
        assertThat(ColorFamily.ofWord(word)).contains(family);
    }

    @Test
    void readsBackTheColorsItWrites() {
        List<PlantColor> colors =
                PlantColor.readList("deep red #8B1E2D; orange #D96B1E").orThrow();
        assertThat(PlantColor.readList(PlantColor.write(colors)).orThrow()).isEqualTo(colors);
        assertThat(PlantColor.readList("none").orThrow()).isEmpty();
        assertThat(PlantColor.write(List.of())).isEqualTo("none");
    }

    @Test
    void refusesAWordThatIsNoColor() {
        assertThat(PlantColor.read("smooth").refusal())
                .hasValueSatisfying(problem -> assertThat(problem.key()).isEqualTo("color.unknown"));
    }

    @Test
    void fallsBackToTheNearestFamilyForAnOddWord() {
        assertThat(PlantColor.read("heliotrope #7C5399").orThrow().family()).isEqualTo(ColorFamily.PURPLE);
    }
}
