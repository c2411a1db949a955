package org.benchleaf.render.page;

import java.util.List;
import java.util.Optional;
import org.benchleaf.shared.fact.Source;

/// One fact on a page.
///
/// @param kind what it states
/// @param value its value
/// @param source who states it; resolved in a numbered line at the foot
/// @param others what other sources state, where the page was asked for it
/// @param inherited whether it is the taxon's fact, not stated for the cultivar itself
public record PageFact(
        FactKind kind, FactValue value, Optional<Source> source, boolean inherited, List<OtherValue> others) {
    public PageFact {
        others = List.copyOf(others);
    }

    /// What a source states that is not the one shown.
    public record OtherValue(FactValue value, Source source) {}

    /// A fact without other sources.
    public PageFact(FactKind kind, FactValue value, Optional<Source> source, boolean inherited) {
        this(kind, value, source, inherited, List.of());
    }

    public static PageFact of(FactKind kind, FactValue value, Source source) {
        return new PageFact(kind, value, Optional.of(source), false);
    }
}
