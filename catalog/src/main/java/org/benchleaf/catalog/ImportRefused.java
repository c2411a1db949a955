package org.benchleaf.catalog;

import java.util.Optional;
import org.benchleaf.catalog.intake.Place;
import org.benchleaf.shared.Problem;

/// An import plan that cannot be applied: the catalog has moved since, or a row contradicts it. Nothing was applied.
public final class ImportRefused extends CatalogException {
    private final transient Optional<Place> place;

    public ImportRefused(Problem problem) {
        super(problem.key() + " " + problem.details(), problem);
        this.place = Optional.empty();
    }

    public ImportRefused(Place place, Problem problem) {
        super(place + ": " + problem.key() + " " + problem.details(), problem);
        this.place = Optional.of(place);
    }

    /// The row that cannot be applied; empty when the whole plan is refused.
    public Optional<Place> place() {
        return place;
    }
}
