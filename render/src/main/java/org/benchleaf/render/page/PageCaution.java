package org.benchleaf.render.page;

import java.util.Optional;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.plant.Caution;

/// What can hurt whom, and who says so.
public record PageCaution(Caution caution, Optional<Source> source) {
    public static PageCaution of(Caution caution, Source source) {
        return new PageCaution(caution, Optional.of(source));
    }
}
