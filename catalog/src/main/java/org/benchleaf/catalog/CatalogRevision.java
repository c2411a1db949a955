package org.benchleaf.catalog;

/// Counts the changes applied to a catalog; a larger number is a later state.
///
/// @param number 0 for an empty catalog
public record CatalogRevision(long number) implements Comparable<CatalogRevision> {
    @Override
    public int compareTo(CatalogRevision other) {
        return Long.compare(number, other.number);
    }
}
