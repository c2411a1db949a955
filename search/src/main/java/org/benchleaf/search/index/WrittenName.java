package org.benchleaf.search.index;

/// One name of a plant as the catalog writes it.
///
/// @param kind which of its names
/// @param text as written
public record WrittenName(Kind kind, String text) {
    /// Kinds of names, the surest first.
    public enum Kind {
        /// The accepted botanical name.
        ACCEPTED,
        SYNONYM,
        /// A common name, the cultivar epithet or the selling name alone, or with the genus before it.
        COMMON
    }

    /// `A Acer rubrum`, as stored.
    String stored() {
        return kind.name().charAt(0) + " " + text;
    }

    static WrittenName read(String stored) {
        Kind kind = switch (stored.charAt(0)) {
            case 'A' -> Kind.ACCEPTED;
            case 'S' -> Kind.SYNONYM;
            default -> Kind.COMMON;
        };
        return new WrittenName(kind, stored.substring(2));
    }
}
