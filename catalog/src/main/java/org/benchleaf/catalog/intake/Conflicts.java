package org.benchleaf.catalog.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.plant.Foliage;

/// Compares new facts with what another source already states of the plant. Both are kept; a person
/// should know.
final class Conflicts {
    private Conflicts() {}

    static List<Doubt> with(PlantRecord plant, List<Fact<?>> facts) {
        List<Doubt> conflicts = new ArrayList<>();
        List<Fact<?>> stated = Stream.concat(plant.facts().all().stream(), plant.otherFacts().stream())
                .filter(fact -> !fact.inherited())
                .toList();
        for (Fact<?> fact : facts) {
            if (stated.contains(fact)) {
                continue; // nothing new
            }
            stated.stream()
                    .filter(other -> other.attribute().equals(fact.attribute())
                            && !other.source().equals(fact.source())
                            && disagree(fact, other))
                    .findFirst()
                    .map(other -> Problem.of("fact.conflict", fact.text())
                            .with("attribute", fact.attribute().id())
                            .with("other", other.text())
                            .with("source", other.source().text()))
                    .ifPresent(problem -> conflicts.add(new Doubt(fact.attribute(), problem, false)));
        }
        return conflicts;
    }

    static boolean disagree(Fact<?> one, Fact<?> other) {
        if (one.attribute().equals(Attributes.HEIGHT) || one.attribute().equals(Attributes.SPREAD)) {
            return one.value() instanceof LengthRange a && other.value() instanceof LengthRange b && isFar(a, b);
        }
        if (one.attribute().equals(Attributes.FOLIAGE)) {
            return keepsLeaves(one) && dropsLeaves(other) || dropsLeaves(one) && keepsLeaves(other);
        }
        return false;
    }

    /// More than twice, or less than half, of anything the other states.
    private static boolean isFar(LengthRange one, LengthRange other) {
        return one.lowCm() > 2 * other.highCm() || other.lowCm() > 2 * one.highCm();
    }

    private static boolean keepsLeaves(Fact<?> foliage) {
        return Optional.of(foliage.value())
                .filter(leaves -> leaves == Foliage.EVERGREEN || leaves == Foliage.SEMI_EVERGREEN)
                .isPresent();
    }

    private static boolean dropsLeaves(Fact<?> foliage) {
        return foliage.value() == Foliage.DECIDUOUS || foliage.value() == Foliage.HERBACEOUS;
    }
}
