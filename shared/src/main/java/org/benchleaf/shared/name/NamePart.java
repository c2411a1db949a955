package org.benchleaf.shared.name;

/// A run of a name in one kind of type, for media that can show more than plain text.
///
/// @param text as printed; a cultivar epithet with its quotes
/// @param type how it is set
/// @param spaced whether a space stands before it
public record NamePart(String text, Type type, boolean spaced) {
    /// How a part of a name is set: Latin in italics, marks and ranks in roman, trade designations in a type of their
    /// own.
    public enum Type {
        LATIN,
        ROMAN,
        CULTIVAR,
        TRADE
    }
}
