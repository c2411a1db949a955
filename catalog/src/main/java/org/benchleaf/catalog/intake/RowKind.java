package org.benchleaf.catalog.intake;

/// What the rows of a file are.
public enum RowKind {
    PLANTS,
    STOCK
}
