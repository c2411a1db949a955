package org.benchleaf.catalog;

import java.util.List;
import java.util.Optional;

/// What a plan would do to the catalog as it is now, found by doing it and taking it back: so that what is
/// shown is what happens.
///
/// @param newPlants plants that are not in the catalog
/// @param changedPlants plants of which something becomes different
/// @param samePlants plants of the file of which nothing becomes different
/// @param newLots lots that are not in the catalog
/// @param changedLots lots of which something becomes different
/// @param sameLots lots of the file of which nothing becomes different
/// @param entries what is new or different, in the order of names; of a very long list the first
public record ImportDiff(
        int newPlants,
        int changedPlants,
        int samePlants,
        int newLots,
        int changedLots,
        int sameLots,
        List<Entry> entries) {
    public ImportDiff {
        entries = List.copyOf(entries);
    }

    public enum Subject {
        PLANT,
        ITEM,
        LOT
    }

    /// One plant, item or lot.
    ///
    /// @param subject what it is
    /// @param isNew whether it is not in the catalog
    /// @param title the plant's name; for a lot its number, for an item its size
    /// @param plant the plant's name
    /// @param differences field by field; empty for a new plant
    public record Entry(Subject subject, boolean isNew, String title, String plant, List<Difference> differences) {
        public Entry {
            differences = List.copyOf(differences);
        }
    }

    /// One field before and after.
    ///
    /// @param field a heading of `docs/spreadsheet.md`, or `name`
    /// @param before as it is; empty when nothing is known
    /// @param after as it would be; empty when it would be taken out
    /// @param source who states it; empty where no source is kept
    /// @param shown whether the value after is, or stays, the one shown; else it is kept beside the one chosen
    public record Difference(
            String field, Optional<String> before, Optional<String> after, String source, boolean shown) {}
}
