package org.benchleaf.search.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.search.Plants;
import org.benchleaf.search.RandomNeeds;
import org.benchleaf.search.RandomWorld;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.need.Reason.Shortfall;
import org.benchleaf.shared.need.Wish;
import org.junit.jupiter.api.Test;

class NearnessTest {
    private static double degree(Wish wish, Shortfall by) {
        return Nearness.degree(new Reason.Missed(wish, Reason.Seen.own(""), by));
    }

    @Test
    void measuresSizesByTheirRatio() {
        Wish wish = new Wish.NoTallerThan(100);
        // twice and half are equally far, ln 2 / ln 4
        assertThat(degree(wish, new Shortfall.Centimetres(100))).isCloseTo(0.5, within(1e-9));
        assertThat(degree(new Wish.AtLeastTall(100), new Shortfall.Centimetres(-50)))
                .isCloseTo(0.5, within(1e-9));
        assertThat(degree(wish, new Shortfall.Centimetres(900))).isZero();
    }

    @Test
    void measuresCountsAndPricesByTheirShare() {
        Wish forty = new Wish.InStock(40, Optional.empty(), Optional.empty());
        assertThat(degree(forty, new Shortfall.TooFew(10))).isCloseTo(0.75, within(1e-9));
        assertThat(degree(forty, new Shortfall.TooFew(40))).isZero();
    }

    @Test
    void staysBetweenNothingAndMetForWhateverIsMissed() {
        RandomWorld world = new RandomWorld(3);
        RandomNeeds needs = new RandomNeeds(3);
        FitJudge judge = new FitJudge();
        for (int serial = 0; serial < 300; serial++) {
            PlantRecord plant = world.plant(serial);
            PlantStock stock = world.stock(serial);
            for (Reason reason :
                    judge.fit(needs.need(), plant, stock, Plants.NOW).reasons()) {
                double degree = Nearness.degree(reason);
                if (reason instanceof Reason.Missed) {
                    assertThat(degree)
                            .as("%s", reason)
                            .isGreaterThanOrEqualTo(0)
                            .isLessThan(1);
                }
            }
        }
    }
}
