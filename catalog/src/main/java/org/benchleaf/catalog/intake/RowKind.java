package org.benchleaf.catalog.intake;

/// What the rows of a file are.
public enum RowKind {
    PLANTS,
    STOCK,
    /// Each row is a lot and tells facts of its plant, which may be new.
    PLANTS_AND_STOCK;

    boolean arePlants() {
        return this != STOCK;
    }

    boolean areStock() {
        return this != PLANTS;
    }
}
