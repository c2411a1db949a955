package org.benchleaf.shared.stock;

import org.benchleaf.shared.measure.YearWeek;

/// What can be had of an item, as of now.
public sealed interface Availability {
    /// So many can be taken today.
    ///
    /// @param count 1 or more
    record InStock(int count) implements Availability {}

    /// None today; so many from that week on.
    ///
    /// @param week when the first are ready
    /// @param count 1 or more
    record From(YearWeek week, int count) implements Availability {}

    /// None today and none coming on.
    record SoldOut() implements Availability {}

    /// No longer grown; what was printed still leads to the plant's page.
    record Withdrawn() implements Availability {}
}
