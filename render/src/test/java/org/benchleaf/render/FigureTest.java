package org.benchleaf.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.content.ContentPack;
import org.benchleaf.content.Wording;
import org.benchleaf.render.figure.Figure;
import org.benchleaf.render.figure.Ink;
import org.benchleaf.render.figure.SizeStand;
import org.benchleaf.render.figure.SvgWriter;
import org.benchleaf.render.figure.YearRing;
import org.benchleaf.render.page.SizeLook;
import org.benchleaf.render.page.YearLook;
import org.benchleaf.shared.color.PlantColor;
import org.benchleaf.shared.color.Srgb;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.measure.LengthStyle;
import org.benchleaf.shared.plant.Foliage;
import org.benchleaf.shared.plant.Habit;
import org.benchleaf.shared.plant.LifeForm;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class FigureTest {
    private final Wording words = Wording.open(ContentPack.builtIn(), Locale.ENGLISH, LengthStyle.IMPERIAL);

    @Test
    void theRingTellsInWordsWhatItShows() {
        Figure ring = YearRing.draw(Samples.iteaYear(), "Itea", words);
        assertThat(ring.title()).isEqualTo("The year of Itea");
        assertThat(ring.alternative())
                .isEqualTo("Flower: white, Jun–Jul. Leaves: green. Fall color: crimson, orange, burgundy, Oct–Nov.");
    }

    @Test
    void anEmptyRingKeepsItsTracksAndSaysSo() {
        Figure ring = YearRing.draw(YearLook.unknown(), "Itea", words);
        assertThat(ring.alternative()).isEqualTo("Nothing recorded for its seasons.");
        assertThat(ring.marks()).isNotEmpty().allMatch(mark -> !mark.toString().contains("Plant["));
    }

    @Test
    void theStandTellsInWordsWhatItShows() {
        assertThat(stand(size("3-5 ft", "4-6 ft", Habit.ARCHING, LifeForm.SHRUB))
                        .alternative())
                .isEqualTo("Mature: 3–5 ft tall, 4–6 ft wide. Outline: arching."
                        + " Drawn to scale beside: person 5 ft 7 in, rule 6 ft 7 in (2 m).");
        assertThat(stand(SizeLook.unknown()).alternative()).isEqualTo("Height not known.");
    }

    @Test
    void atLeastTwelveSilhouettesDiffer() {
        Set<String> drawings = new HashSet<>();
        for (Habit habit : Habit.values()) {
            drawings.add(stand(size("4-6 ft", "4-6 ft", habit, LifeForm.SHRUB))
                    .marks()
                    .toString());
            drawings.add(stand(size("4-6 ft", "4-6 ft", habit, LifeForm.PERENNIAL))
                    .marks()
                    .toString());
        }
        assertThat(drawings).hasSizeGreaterThan(24);
    }

    // from a 10 cm groundcover to a 30 m tree
    @ParameterizedTest
    @CsvSource({
        "2-4 in, 18-24 in, GROUNDCOVER",
        "24-30 in, 24 in, PERENNIAL",
        "10-12 ft, 3-4 ft, CONIFER",
        "70-100 ft, 35-50 ft, TREE",
        "100-120 ft, 90-110 ft, TREE"
    })
    void everySizeStaysWithinItsFrame(String height, String spread, LifeForm form) {
        Figure stand = stand(size(height, spread, Habit.ROUNDED, form));
        assertThat(SvgWriter.write(stand, "x")).doesNotContain("NaN").doesNotContain("Infinity");
        double[] reach = {Double.MAX_VALUE, 0, Double.MAX_VALUE, 0};
        java.util.regex.Matcher place = java.util.regex.Pattern.compile(
                        "(?:Move|Line|Curve)\\[(?:[^\\]]*, )?x=([-0-9.E]+), y=([-0-9.E]+)\\]")
                .matcher(stand.marks().toString().replaceAll("Within\\[.*?marks=\\[.*?\\]\\]\\]\\]", ""));
        while (place.find()) {
            reach[0] = Math.min(reach[0], Double.parseDouble(place.group(1)));
            reach[1] = Math.max(reach[1], Double.parseDouble(place.group(1)));
        }
        assertThat(reach[0]).isGreaterThan(-2);
        assertThat(reach[1]).isLessThan(stand.width() + 2);
    }

    @ParameterizedTest
    @EnumSource(
            value = Ink.Role.class,
            names = {"TEXT", "SOFT"})
    void wordsStandOutFromThePaper(Ink.Role role) {
        // WCAG 2.x AA for text: 4.5
        assertThat(role.onPaper().contrastWith(new Srgb(255, 255, 255))).isGreaterThanOrEqualTo(4.5);
    }

    @Test
    void wordsInSvgAreEscaped() {
        Figure figure = new Figure(10, 10, java.util.List.of(), "<b> & \"x\"", "</desc><script>");
        assertThat(SvgWriter.write(figure, "f"))
                .contains("&lt;b&gt; &amp; &quot;x&quot;", "&lt;/desc&gt;&lt;script&gt;")
                .doesNotContain("<script>");
    }

    @Test
    void aTreeOrShrubThatDropsItsLeavesIsShownBareAtTenYears() {
        Set<String> drawings = new HashSet<>();
        for (LifeForm form : Set.of(LifeForm.TREE, LifeForm.SHRUB)) {
            for (Habit habit : Habit.values()) {
                Figure bare = stand(tenYears(habit, form, Foliage.DECIDUOUS));
                Figure leafy = stand(tenYears(habit, form, Foliage.EVERGREEN));
                assertThat(bare.alternative()).contains("drawn bare, as in winter");
                assertThat(leafy.alternative()).doesNotContain("bare");
                assertThat(SvgWriter.write(bare, "f"))
                        .as(habit.toString())
                        .contains("#D43B34", "10 years, in winter")
                        .isNotEqualTo(SvgWriter.write(leafy, "f"));
                drawings.add(bare.marks().toString());
            }
        }
        assertThat(drawings).hasSizeGreaterThanOrEqualTo(14);
    }

    @Test
    void stemsWithAColorAreShownOnTheGrownPlantWhereNoSizeAtTenYearsIsKnown() {
        SizeLook dogwood = new SizeLook(
                LengthRange.read("7-9 ft").toOptional(),
                LengthRange.read("7-9 ft").toOptional(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(Habit.MULTISTEM),
                Set.of(LifeForm.SHRUB),
                Optional.of(Foliage.DECIDUOUS),
                Optional.empty(),
                PlantColor.read("red #D43B34").toOptional());
        assertThat(SvgWriter.write(stand(dogwood), "f")).contains("#D43B34", ">in winter<");
        assertThat(stand(dogwood).alternative()).contains("Drawn bare too, as in winter.");
        assertThat(SizeStand.alternative(dogwood, 280, words))
                .as("on a page of a telephone")
                .contains("Drawn bare too");
        assertThat(SizeStand.alternative(dogwood, 230, words))
                .as("too narrow for both")
                .doesNotContain("bare");
    }

    private static SizeLook tenYears(Habit habit, LifeForm form, Foliage foliage) {
        return new SizeLook(
                LengthRange.read("8-10 ft").toOptional(),
                LengthRange.read("8-10 ft").toOptional(),
                LengthRange.read("4-5 ft").toOptional(),
                Optional.empty(),
                Optional.of(habit),
                Set.of(form),
                Optional.of(foliage),
                PlantColor.read("green #5E7F4B").toOptional(),
                PlantColor.read("red #D43B34").toOptional());
    }

    private Figure stand(SizeLook size) {
        return SizeStand.draw(size, "x", 312, 190, words);
    }

    private static SizeLook size(String height, String spread, Habit habit, LifeForm form) {
        return new SizeLook(
                LengthRange.read(height).toOptional(),
                LengthRange.read(spread).toOptional(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(habit),
                Set.of(form),
                Optional.empty(),
                Optional.empty());
    }
}
