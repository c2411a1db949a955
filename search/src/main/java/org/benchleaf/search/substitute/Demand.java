package org.benchleaf.search.substitute;

import java.util.Optional;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.stock.StockSize;

/// How many are wanted, in which size, by when.
///
/// @param count 1 or more
/// @param size any when empty
/// @param by the week by which they must be ready; now when empty
/// @param stockedOnly whether what cannot be had is left out, as is usual; without it plants are compared
///     whatever there is of them
public record Demand(int count, Optional<StockSize> size, Optional<YearWeek> by, boolean stockedOnly) {
    /// One of any size, now.
    public static final Demand ANY = new Demand(1, Optional.empty(), Optional.empty(), true);

    /// Whatever there is of them.
    public static final Demand NONE = new Demand(1, Optional.empty(), Optional.empty(), false);

    public Demand {
        if (count < 1) {
            throw new IllegalArgumentException("a count is 1 or more; got " + count);
        }
    }
}
