package org.benchleaf.catalog.lists;

import java.util.Optional;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.stock.StockSize;

/// One line of a plant list.
///
/// @param number of the line, 1 or more, never used again within the list
/// @param plant what is planted
/// @param size in which it is bought; any when empty
/// @param quantity 1 or more
/// @param worked how the quantity was worked out, for example `200 sq ft at 18 in, triangular, 5 % more`; may
///     be empty
/// @param note may be empty
public record ListLine(int number, PlantKey plant, Optional<StockSize> size, int quantity, String worked, String note) {
    public ListLine {
        if (number < 1 || quantity < 1) {
            throw new IllegalArgumentException(
                    "a line has a number and a quantity of 1 or more; got " + number + ", " + quantity);
        }
    }
}
