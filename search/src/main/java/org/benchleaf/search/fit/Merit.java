package org.benchleaf.search.fit;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Caution;
import org.benchleaf.shared.plant.Grown;
import org.benchleaf.shared.plant.Hazard;
import org.benchleaf.shared.plant.Season;
import org.benchleaf.shared.site.DamageRating;

/// What a plant is worth in a garden whatever was asked: it parts plants that meet a need alike, before their
/// names do. Worth counts above all how widely it is grown, then seasons of interest, whether it is native, gives to
/// wildlife, has uses, is left by deer; against it count cautions, most of all that it spreads. The points are ours, no
/// source.
public final class Merit {
    public static final int MOST = 31;

    private static final int START = 4;
    private static final int GROWN_UNKNOWN = 9;
    private static final int MOST_SEASONS = 3;

    /// A show in hundredths that is worth a walk.
    private static final int STRONG = 40;

    private static final Wish.NativeTo NATIVE = new Wish.NativeTo(Optional.empty());

    /// What a point of merit adds to nearness, in thousandths of a weight: all of it less than one wish that is met
    /// well.
    private static final int A_POINT = 2;

    private Merit() {}

    /// What merit adds to the nearness of a plant, in thousandths of a weight.
    public static int nearness(int merit) {
        return merit * A_POINT;
    }

    /// @return 0 to 31
    public static int of(PlantRecord plant) {
        Facts facts = plant.facts();
        int points = START + facts.value(Attributes.GROWN).map(Merit::worth).orElse(GROWN_UNKNOWN);
        points += (int) Math.min(
                MOST_SEASONS,
                Arrays.stream(Season.values())
                        .filter(season -> Showing.strength(season, facts) >= STRONG)
                        .count());
        points += OriginJudge.judge(NATIVE, facts) instanceof Reason.Met ? 2 : 0;
        points += facts.value(Attributes.WILDLIFE).isPresent() ? 1 : 0;
        points += facts.value(Attributes.USES).isPresent() ? 1 : 0;
        points += facts.value(Attributes.DEER)
                        .filter(rating -> rating.compareTo(DamageRating.SELDOM) <= 0)
                        .isPresent()
                ? 1
                : 0;
        for (Caution caution : facts.value(Attributes.CAUTIONS).orElse(List.of())) {
            points -= caution.hazard() == Hazard.SPREADS ? 5 : 1;
        }
        return Math.clamp(points, 0, MOST);
    }

    /// What many grow has proved itself, and can be had again.
    private static int worth(Grown grown) {
        return switch (grown) {
            case STAPLE -> 20;
            case COMMON -> 14;
            case UNCOMMON -> 6;
            case RARE -> 0;
        };
    }
}
