package org.benchleaf.shared.need;

/// A wish and how much it counts.
///
/// @param wish what is asked
/// @param weight how much it counts beside the others, 0.1 to 10; 1 is usual, a "preferably" counts less
/// @param fixed never given up: a plant known to miss it is no answer, one not known to meet it says so
/// @param counting whether it counts as a whole or by degree
public record WeighedWish(Wish wish, double weight, boolean fixed, Counting counting) {
    public WeighedWish {
        if (!(weight >= 0.1 && weight <= 10)) {
            throw new IllegalArgumentException("a weight is 0.1 to 10; got " + weight);
        }
    }

    public WeighedWish(Wish wish, double weight, boolean fixed) {
        this(wish, weight, fixed, Counting.WHOLE);
    }

    /// As usual: weight 1; hardiness, safety, sale rules and what a plant must or must not be are fixed.
    public static WeighedWish of(Wish wish) {
        return new WeighedWish(wish, 1, isUsuallyFixed(wish));
    }

    /// Whether a wish of this kind is never given up unless the asker says so.
    public static boolean isUsuallyFixed(Wish wish) {
        return wish instanceof Wish.HardyIn
                || wish instanceof Wish.SafeFor
                || wish instanceof Wish.ShipTo
                || wish instanceof Wish.NotOfGenus
                || wish instanceof Wish.OfFamily
                || wish instanceof Wish.NotOfFamily
                || wish instanceof Wish.OfGenus
                || wish instanceof Wish.NotOfSpecies
                || wish instanceof Wish.OfSpecies;
    }

    /// Whether the asker gave up what is usually fixed; an answer says so.
    public boolean freed() {
        return !fixed && isUsuallyFixed(wish);
    }

    public WeighedWish weighing(double other) {
        return new WeighedWish(wish, other, fixed, counting);
    }

    public WeighedWish counting(Counting other) {
        return new WeighedWish(wish, weight, fixed, other);
    }

    public WeighedWish fixed(boolean other) {
        return new WeighedWish(wish, weight, other, counting);
    }
}
