package org.benchleaf.render.page;

import java.util.Optional;
import org.benchleaf.shared.fact.Source;

/// One fact on a page.
///
/// @param kind what it states
/// @param value its value
/// @param source who states it; resolved in a numbered line at the foot
/// @param inherited whether it is the taxon's fact, not stated for the cultivar itself
public record PageFact(FactKind kind, FactValue value, Optional<Source> source, boolean inherited) {
    public static PageFact of(FactKind kind, FactValue value, Source source) {
        return new PageFact(kind, value, Optional.of(source), false);
    }
}
