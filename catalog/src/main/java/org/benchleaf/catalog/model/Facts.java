package org.benchleaf.catalog.model;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// The chosen facts of a plant, one an attribute, its own and inherited ones together.
public final class Facts {
    public static final Facts NONE = new Facts(Map.of());

    private final Map<Attribute<?>, Fact<?>> byAttribute;

    private Facts(Map<Attribute<?>, Fact<?>> byAttribute) {
        this.byAttribute = byAttribute;
    }

    /// @throws IllegalArgumentException when two facts state the same attribute
    public static Facts of(List<Fact<?>> facts) {
        Map<Attribute<?>, Fact<?>> byAttribute = new LinkedHashMap<>();
        for (Fact<?> fact : facts) {
            if (byAttribute.put(fact.attribute(), fact) != null) {
                throw new IllegalArgumentException("two chosen facts for " + fact.attribute());
            }
        }
        return new Facts(byAttribute);
    }

    /// The fact of an attribute; empty when the catalog does not know.
    public <T> Optional<Fact<T>> fact(Attribute<T> attribute) {
        @SuppressWarnings("unchecked") // a fact is filed under its own attribute
        Fact<T> fact = (Fact<T>) byAttribute.get(attribute);
        return Optional.ofNullable(fact);
    }

    /// The bare value of an attribute.
    public <T> Optional<T> value(Attribute<T> attribute) {
        return fact(attribute).map(Fact::value);
    }

    /// All facts, in no promised order.
    public List<Fact<?>> all() {
        return List.copyOf(byAttribute.values());
    }

    /// These facts and one more; it takes the place of one that states the same attribute.
    public Facts and(Fact<?> fact) {
        Map<Attribute<?>, Fact<?>> more = new LinkedHashMap<>(byAttribute);
        more.put(fact.attribute(), fact);
        return new Facts(more);
    }

    /// These facts, and from the taxon what they do not state.
    public Facts inheriting(Facts taxon) {
        Map<Attribute<?>, Fact<?>> joined = new LinkedHashMap<>(byAttribute);
        for (Fact<?> above : taxon.byAttribute.values()) {
            Attribute<?> attribute = above.attribute();
            boolean tied = Attributes.inheritedOnlyWith(attribute)
                    .map(byAttribute::containsKey)
                    .orElse(false);
            boolean shown = Attributes.colorsIn(attribute)
                    .flatMap(this::value)
                    .map(colors -> !colors.isEmpty())
                    .orElse(true);
            if (attribute.inherited() && !tied && shown) {
                joined.putIfAbsent(attribute, above.asInherited());
            }
        }
        return new Facts(joined);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Facts facts && facts.byAttribute.equals(byAttribute);
    }

    @Override
    public int hashCode() {
        return byAttribute.hashCode();
    }

    @Override
    public String toString() {
        return byAttribute.values().toString();
    }
}
