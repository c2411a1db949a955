package org.benchleaf.catalog.ledger;

/// How many plants a lot has at one moment.
///
/// @param count how many stand there: the sum of its entries, 0 or more
/// @param held how many of them are set aside by holds that have not ended, 0 or more; more than the count when
///     plants that were held are gone
public record Balance(int count, int held) {
    public Balance {
        if (count < 0 || held < 0) {
            throw new IllegalArgumentException("no lot has " + count + " plants, " + held + " of them held");
        }
    }

    /// How many can be promised; never below zero.
    public int free() {
        return Math.max(0, count - held);
    }
}
