package org.benchleaf.search.substitute;

import java.util.ArrayList;
import java.util.List;
import org.benchleaf.search.NeedQuery;
import org.benchleaf.shared.need.Counting;
import org.benchleaf.shared.need.Need;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;

/// The wishes of a need that is being made from a plant. What the customer asks counts as a whole; what is taken
/// from the plant counts by degree, so that it only orders what answers.
final class WishList {
    private final List<WeighedWish> asked;
    private final List<WeighedWish> wishes = new ArrayList<>();

    /// @param asked what the customer asks
    WishList(List<WeighedWish> asked) {
        this.asked = asked;
    }

    /// Adds what was asked for, as it was.
    void whole(WeighedWish wish) {
        wishes.add(wish);
    }

    /// Adds a wish taken from the plant.
    void put(Wish wish, double weight) {
        wishes.add(new WeighedWish(wish, weight, false, Counting.BY_DEGREE));
    }

    /// Adds a wish taken from the plant, unless the customer asks something of the kind or it stands there already.
    void add(Wish wish, double weight) {
        if (!asks(wish.getClass())
                && wishes.stream().noneMatch(each -> each.wish().equals(wish))) {
            put(wish, weight);
        }
    }

    /// Whether the customer asks something of this kind.
    boolean asks(Class<? extends Wish> kind) {
        return asked.stream().anyMatch(each -> kind.isInstance(each.wish()));
    }

    /// The need, the last wishes left out where they are too many.
    Need need() {
        return new Need(wishes.stream().limit(NeedQuery.MOST_WISHES).toList());
    }
}
