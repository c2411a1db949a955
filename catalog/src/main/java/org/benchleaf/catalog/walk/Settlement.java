package org.benchleaf.catalog.walk;

/// A way out of a conflict.
public sealed interface Settlement {
    /// Writes the stock as it was seen, though more is held, or somebody counted later.
    record AsSeen() implements Settlement {}

    /// It was this lot.
    record AtLot(String lot) implements Settlement {}

    /// Leaves the stock alone.
    record NoteOnly() implements Settlement {}
}
