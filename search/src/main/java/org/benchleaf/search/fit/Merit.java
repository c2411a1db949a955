package org.benchleaf.search.fit;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Caution;
import org.benchleaf.shared.plant.Foliage;
import org.benchleaf.shared.plant.Grown;
import org.benchleaf.shared.plant.Hazard;
import org.benchleaf.shared.plant.Season;
import org.benchleaf.shared.site.DamageRating;

/// What a plant is worth in a garden whatever was asked: it parts plants that meet a need alike, before their
/// names do. Worth counts how widely it is grown, seasons of interest, what it gives to wildlife, uses, whether it is
/// native, whether deer leave it; against it count cautions, most of all that it spreads. The points are ours, no
/// source.
public final class Merit {
    public static final int MOST = 31;

    private static final int START = 6;
    private static final int GROWN_UNKNOWN = 5;

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
        for (Season season : Season.values()) {
            points += Showing.strength(season, facts) >= STRONG ? 1 : 0;
        }
        points += facts.value(Attributes.FOLIAGE)
                        .filter(Foliage.EVERGREEN::equals)
                        .isPresent()
                ? 1
                : 0;
        points += OriginJudge.judge(NATIVE, facts) instanceof Reason.Met ? 3 : 0;
        points += Math.min(2, facts.value(Attributes.WILDLIFE).map(Set::size).orElse(0));
        points += Math.min(2, facts.value(Attributes.USES).map(Set::size).orElse(0));
        points += facts.value(Attributes.DEER)
                        .filter(rating -> rating.compareTo(DamageRating.SELDOM) <= 0)
                        .isPresent()
                ? 1
                : 0;
        for (Caution caution : facts.value(Attributes.CAUTIONS).orElse(List.of())) {
            points -= caution.hazard() == Hazard.SPREADS ? 6 : 1;
        }
        return Math.clamp(points, 0, MOST);
    }

    /// What many grow has proved itself, and can be had again.
    private static int worth(Grown grown) {
        return switch (grown) {
            case STAPLE -> 12;
            case COMMON -> 8;
            case UNCOMMON -> 3;
            case RARE -> 0;
        };
    }
}
