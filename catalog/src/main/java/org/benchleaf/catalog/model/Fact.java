package org.benchleaf.catalog.model;

import org.benchleaf.shared.fact.Source;

/// One attribute's value for a plant, and who states it.
///
/// @param attribute what is stated
/// @param value its value
/// @param source who states it; printed beside it
/// @param inherited whether the plant's taxon states it, not the plant itself
/// @param text the value in its stored form, as its attribute's codec writes it
/// @param <T> the kind of value
public record Fact<T>(Attribute<T> attribute, T value, Source source, boolean inherited, String text) {
    /// A fact that was not read from a store, where its text stands already.
    public Fact(Attribute<T> attribute, T value, Source source, boolean inherited) {
        this(attribute, value, source, inherited, attribute.codec().write(value));
    }

    /// The same fact as a cultivar takes it over from its taxon.
    public Fact<T> asInherited() {
        return new Fact<>(attribute, value, source, true, text);
    }
}
