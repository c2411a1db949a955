package org.benchleaf.search.substitute;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.shared.plant.Caution;
import org.benchleaf.shared.plant.Creature;
import org.benchleaf.shared.plant.Hazard;

/// What a substitute can do harm that the original is not known to do.
final class Hazards {
    private static final List<Creature> WATCHED = List.of(Creature.CHILDREN, Creature.DOGS, Creature.HORSES);

    private Hazards() {}

    /// The cautions of the substitute that go beyond the original's: another hazard, or the same for somebody
    /// else.
    static List<Caution> beyond(Facts original, Facts substitute) {
        List<Caution> known = original.value(Attributes.CAUTIONS).orElse(List.of());
        List<Caution> more = new ArrayList<>();
        for (Caution caution : substitute.value(Attributes.CAUTIONS).orElse(List.of())) {
            Set<Creature> whom = new TreeSet<>(caution.whom());
            known.stream()
                    .filter(other -> other.hazard() == caution.hazard())
                    .forEach(other -> whom.removeIf(creature -> covers(other.whom(), creature)));
            if (!whom.isEmpty()) {
                more.add(new Caution(caution.hazard(), whom, caution.how()));
            }
        }
        return more;
    }

    /// What hurts people hurts children, and the other way.
    private static boolean covers(Set<Creature> whom, Creature creature) {
        boolean person = creature == Creature.PEOPLE || creature == Creature.CHILDREN;
        return whom.contains(creature)
                || person && (whom.contains(Creature.PEOPLE) || whom.contains(Creature.CHILDREN));
    }

    /// Those whom the original is not known to hurt: what hurts them comes later among equals.
    static List<Creature> concerning(Facts original) {
        List<Caution> known = original.value(Attributes.CAUTIONS).orElse(List.of());
        return WATCHED.stream()
                .filter(creature -> known.stream()
                        .noneMatch(caution -> caution.hazard() != Hazard.SPREADS && covers(caution.whom(), creature)))
                .toList();
    }
}
