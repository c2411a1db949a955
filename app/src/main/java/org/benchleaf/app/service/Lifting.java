package org.benchleaf.app.service;

import java.util.Collection;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.content.Wording;
import org.benchleaf.render.page.PageCaution;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.plant.Caution;
import org.benchleaf.shared.plant.Creature;
import org.benchleaf.shared.plant.Hazard;
import org.benchleaf.shared.stock.LiftWeight;
import org.benchleaf.shared.stock.StockSize;

/// The caution of what is too heavy for one person, from the size alone.
final class Lifting {
    private final Wording words;

    Lifting(Wording words) {
        this.words = words;
    }

    /// The caution for a size; empty when one person may lift it, or no estimate can be made.
    Optional<PageCaution> caution(StockSize size) {
        return LiftWeight.of(size).filter(LiftWeight::isHeavy).map(weight -> caution(size, weight));
    }

    /// The caution for the heaviest of several sizes.
    Optional<PageCaution> heaviest(Collection<StockSize> sizes) {
        return sizes.stream()
                .filter(size -> LiftWeight.of(size).isPresent())
                .max(Comparator.comparing(
                        size -> LiftWeight.of(size).orElseThrow().pounds()))
                .flatMap(this::caution);
    }

    private PageCaution caution(StockSize size, LiftWeight weight) {
        String kind = weight.ball() ? "ball" : "container";
        String how =
                words.text("weight." + kind, Map.of("pounds", words.count(weight.pounds()), "size", words.size(size)));
        return PageCaution.of(
                new Caution(Hazard.WEIGHT, Set.of(Creature.PEOPLE), how),
                new Source(words.text("weight.source." + kind)));
    }
}
