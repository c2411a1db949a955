package org.benchleaf.shared.need;

/// A wish and how much it counts.
///
/// @param wish what is asked
/// @param weight how much it counts beside the others, 0.1 to 10; 1 is usual, a "preferably" counts less
/// @param fixed never given up: a plant known to miss it is no answer, one not known to meet it says so
public record WeighedWish(Wish wish, double weight, boolean fixed) {
    public WeighedWish {
        if (!(weight >= 0.1 && weight <= 10)) {
            throw new IllegalArgumentException("a weight is 0.1 to 10; got " + weight);
        }
    }

    /// As usual: hardiness, safety and sale rules fixed, everything else weight 1.
    public static WeighedWish of(Wish wish) {
        boolean fixed = wish instanceof Wish.HardyIn
                || wish instanceof Wish.SafeFor
                || wish instanceof Wish.ShipTo
                || wish instanceof Wish.NotOfGenus
                || wish instanceof Wish.OfGenus;
        return new WeighedWish(wish, 1, fixed);
    }
}
