package org.benchleaf.search.fit;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Caution;
import org.benchleaf.shared.plant.Creature;
import org.benchleaf.shared.plant.Hazard;

/// Whether a plant is known to hurt somebody. It never says "safe": a caution that is not there proves nothing.
final class SafetyJudge {
    private static final Set<Hazard> HURTS = Set.of(Hazard.TOXIC, Hazard.IRRITANT, Hazard.THORNS);

    private SafetyJudge() {}

    static Reason judge(Wish.SafeFor wish, Facts facts) {
        Optional<Fact<List<Caution>>> fact = facts.fact(Attributes.CAUTIONS);
        Set<Creature> concerned = concerned(wish.creature());
        boolean hurts = fact.map(Fact::value).orElse(List.of()).stream()
                .anyMatch(caution -> hurts(caution, wish.creature())
                        && caution.whom().stream().anyMatch(concerned::contains));
        return hurts
                ? new Reason.Missed(wish, FitJudge.seen(fact.orElseThrow()), new Reason.Shortfall.NotSo())
                : new Reason.Unknown(wish);
    }

    private static boolean hurts(Caution caution, Creature creature) {
        return HURTS.contains(caution.hazard()) || creature == Creature.GARDENS && caution.hazard() == Hazard.SPREADS;
    }

    /// Whose cautions count: what hurts people hurts children and the other way, and a horse is livestock.
    private static Set<Creature> concerned(Creature creature) {
        return switch (creature) {
            case CHILDREN, PEOPLE -> Set.of(Creature.CHILDREN, Creature.PEOPLE);
            case HORSES, LIVESTOCK -> Set.of(Creature.HORSES, Creature.LIVESTOCK);
            case DOGS, CATS, BIRDS, GARDENS -> Set.of(creature);
        };
    }
}
