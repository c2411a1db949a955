package org.benchleaf.catalog.model;

/// A kind of fact that the catalog can hold about a plant.
///
/// @param id its name in spreadsheets, in the store and in messages: lower case, underscores
/// @param codec how its value is read and written
/// @param inherited whether a cultivar that does not state it takes it from its taxon
/// @param <T> the kind of value
public record Attribute<T>(String id, Codec<T> codec, boolean inherited) {
    static <T> Attribute<T> of(String id, Codec<T> codec) {
        return new Attribute<>(id, codec, true);
    }

    static <T> Attribute<T> own(String id, Codec<T> codec) {
        return new Attribute<>(id, codec, false);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Attribute<?> attribute && attribute.id.equals(id);
    }

    @Override
    public int hashCode() {
        return id.hashCode();
    }

    @Override
    public String toString() {
        return id;
    }
}
