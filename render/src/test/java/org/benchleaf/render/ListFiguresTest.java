package org.benchleaf.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.content.ContentPack;
import org.benchleaf.content.Wording;
import org.benchleaf.render.figure.Figure;
import org.benchleaf.render.figure.SizeRow;
import org.benchleaf.render.figure.StateIcons;
import org.benchleaf.render.figure.YearStrip;
import org.benchleaf.render.page.Show;
import org.benchleaf.render.page.YearLook;
import org.benchleaf.shared.measure.LengthStyle;
import org.junit.jupiter.api.Test;

/// Figures of lists and comparisons.
class ListFiguresTest {
    private final Wording words = Wording.open(ContentPack.builtIn(), Locale.ENGLISH, LengthStyle.IMPERIAL);

    @Test
    void theStripTellsInWordsWhatItShows() {
        Figure strip = YearStrip.draw(Samples.iteaYear(), YearStrip.NARROW, "Itea", words);
        assertThat(strip.alternative())
                .isEqualTo(
                        "Itea: Flower: white, Jun–Jul. Leaves: green. Fall color: crimson, orange, burgundy, Oct–Nov.");
        assertThat(YearStrip.draw(YearLook.unknown(), YearStrip.NARROW, "Itea", words)
                        .alternative())
                .isEqualTo("Itea: no season recorded");
    }

    @Test
    void whatShowsIsToldByShapeAndPlaceWithoutColor() {
        Optional<Show> gray = Samples.show("gray #808080", "May");
        Set<String> outlines = Stream.of(year(gray, 0), year(gray, 1), year(gray, 2), leaves(), fall())
                .map(look -> YearStrip.draw(look, YearStrip.NARROW, "x", words).marks().stream()
                        .map(mark -> mark.toString().replaceAll("Srgb\\[[^]]*]", ""))
                        .collect(Collectors.joining()))
                .collect(Collectors.toSet());
        assertThat(outlines).hasSize(5);
    }

    @Test
    void everySignOfACropHasAnOutlineOfItsOwn() {
        Set<String> outlines = Stream.of(StateIcons.State.values())
                .map(state -> StateIcons.draw(state, "x").marks().toString())
                .collect(Collectors.toSet());
        assertThat(outlines).hasSize(StateIcons.State.values().length);
    }

    @Test
    void aRowOfSizesDrawsTheTallerOneTaller() {
        Figure row = SizeRow.draw(
                List.of(
                        new SizeRow.Plant("Itea", SampleSheets.iteaSheet().size()),
                        new SizeRow.Plant("Taxus", SampleSheets.yewSheet().size())),
                96,
                130,
                110,
                words);
        assertThat(row.width()).isEqualTo(96 + 2 * 130);
        assertThat(row.alternative()).contains("Itea: Mature: 3–5 ft tall", "Taxus: Mature: 10–12 ft tall");
        assertThat(row.marks().toString()).doesNotContain("NaN");
    }

    private static YearLook year(Optional<Show> show, int part) {
        return new YearLook(
                part == 0 ? show : Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                List.of(),
                part == 1 ? show : Optional.empty(),
                part == 2 ? show : Optional.empty());
    }

    private static YearLook leaves() {
        return new YearLook(
                Optional.empty(),
                Optional.empty(),
                List.of(),
                Samples.colors("gray #808080"),
                List.of(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    private static YearLook fall() {
        return new YearLook(
                Optional.empty(),
                Optional.empty(),
                List.of(),
                Samples.colors("gray #808080"),
                Samples.colors("gray #808080"),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty());
    }
}
