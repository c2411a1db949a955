package org.benchleaf.app.service;

import java.util.Optional;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.shared.stock.StockSize;

/// A plant to print something for.
///
/// @param plant whom
/// @param size the item's size, when one was asked for
/// @param copies how many, when a number was given with it
public record Wanted(PlantRecord plant, Optional<StockSize> size, Optional<Integer> copies) {
    /// One, of whatever size comes first.
    public static Wanted one(PlantRecord plant) {
        return new Wanted(plant, Optional.empty(), Optional.empty());
    }
}
