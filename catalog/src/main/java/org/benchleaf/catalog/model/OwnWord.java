package org.benchleaf.catalog.model;

import java.util.Set;

/// What of a plant is the shop's own word; the rest was told by reference works.
///
/// @param facts which facts, shown or not
/// @param commonNames which common names
/// @param synonyms which synonyms
public record OwnWord(Set<Stated> facts, Set<CommonName> commonNames, Set<Synonym> synonyms) {
    public static final OwnWord NONE = new OwnWord(Set.of(), Set.of(), Set.of());

    public OwnWord {
        facts = Set.copyOf(facts);
        commonNames = Set.copyOf(commonNames);
        synonyms = Set.copyOf(synonyms);
    }

    /// One fact of a plant: nobody states an attribute twice.
    ///
    /// @param attribute its id
    /// @param source who states it
    public record Stated(String attribute, String source) {}

    public boolean holds(Fact<?> fact) {
        return facts.contains(new Stated(fact.attribute().id(), fact.source().text()));
    }
}
