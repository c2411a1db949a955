package org.benchleaf.search.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.benchleaf.search.Plants.facts;

import org.benchleaf.catalog.model.Facts;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.need.Wish;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WinterJudgeTest {
    private static final Wish.ShowsInWinter WINTER = new Wish.ShowsInWinter();

    private static Reason judge(Facts facts) {
        return WinterJudge.judge(WINTER, facts);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
        stem_color,           red,     stem_months, Nov-Mar
        fruit_color,          red,     fruit,       Sep-Jan
        flower_color,         yellow,  bloom,       Feb-Mar
        foliage,              evergreen, height,    1-2 m
        winter_foliage_color, tan,     foliage,     herbaceous
        """)
    void anyOfItIsEnough(String one, String value, String other, String second) {
        assertThat(judge(facts(one, value, other, second))).isInstanceOf(Reason.Met.class);
    }

    @Test
    void whatIsSeenAtOtherTimesIsNotEnough() {
        assertThat(judge(facts("foliage", "deciduous", "fruit_color", "red", "fruit", "Jul-Aug")))
                .isInstanceOf(Reason.Unknown.class);
    }

    @Test
    void fruitThatAPlantHasNotIsNotSeen() {
        assertThat(judge(facts("foliage", "deciduous", "fruit_color", "none", "fruit", "Oct-Feb")))
                .isInstanceOf(Reason.Unknown.class);
    }

    @Test
    void whatDiesToTheGroundShowsNothing() {
        assertThat(judge(facts("foliage", "herbaceous", "flower_color", "blue", "bloom", "Jun")))
                .isInstanceOf(Reason.Missed.class);
    }

    @Test
    void saysOfWhatItIsSeen() {
        Reason reason =
                judge(facts("stem_color", "red", "stem_months", "Nov-Mar", "fruit_color", "white", "fruit", "Oct-Dec"));

        assertThat(((Reason.Met) reason).seen().value()).matches("stem: red.* · fruit: white.*");
    }

    @Test
    void redStemsStandBeforeGreenLeaves() {
        assertThat(WinterJudge.hundredths(facts("stem_color", "red", "stem_months", "Nov-Mar")))
                .isGreaterThan(WinterJudge.hundredths(facts("foliage", "evergreen")));
    }
}
