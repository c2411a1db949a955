package org.benchleaf.search.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.need.Wish;
import org.junit.jupiter.api.Test;

/// The texts are made up in the form that labels use: common practice, no source.
class RightsJudgeTest {
    private static final Wish.FreeOf PATENT = new Wish.FreeOf(Wish.Right.PATENT);
    private static final Wish.FreeOf MARK = new Wish.FreeOf(Wish.Right.MARK);
    private static final BotanicalName SPECIES = BotanicalName.ofSpecies("Itea", "virginica");

    @Test
    void aPatentStandsInTheWayUntilItHasExpired() {
        assertThat(said(PATENT, "PP12345")).isInstanceOf(Reason.Missed.class);
        assertThat(said(PATENT, "PPAF")).isInstanceOf(Reason.Missed.class);
        assertThat(said(PATENT, "PP12345 (expired 2021)")).isInstanceOf(Reason.Met.class);
        assertThat(said(MARK, "sold as Somename®")).isInstanceOf(Reason.Missed.class);
    }

    @Test
    void whatIsSaidOfOneRightSaysNothingOfAnother() {
        assertThat(said(MARK, "PP12345")).isInstanceOf(Reason.Unknown.class);
        assertThat(said(PATENT, "Somename™")).isInstanceOf(Reason.Unknown.class);
        assertThat(said(MARK, "none")).isInstanceOf(Reason.Met.class);
    }

    @Test
    void silenceAboutACultivarProvesNothingAndAWildSpeciesIsFree() {
        assertThat(RightsJudge.judge(PATENT, Facts.NONE, SPECIES.withCultivar("Somename")))
                .isInstanceOf(Reason.Unknown.class);
        assertThat(RightsJudge.judge(PATENT, Facts.NONE, SPECIES)).isInstanceOf(Reason.Met.class);
    }

    private static Reason said(Wish.FreeOf wish, String rights) {
        Fact<String> fact = new Fact<>(Attributes.RIGHTS, rights, new Source("a test"), false);
        return RightsJudge.judge(wish, Facts.of(List.of(fact)), SPECIES.withCultivar("Somename"));
    }
}
