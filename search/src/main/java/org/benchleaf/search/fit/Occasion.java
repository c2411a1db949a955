package org.benchleaf.search.fit;

import java.util.Optional;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.Need;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.stock.StockSize;

/// When and what is bought: what a wish about stock or price needs to know of the other wishes.
///
/// @param now the week of asking
/// @param by the week by which it must be ready
/// @param size the size asked for; any when empty
/// @param count how many of one item, 1 or more
public record Occasion(YearWeek now, YearWeek by, Optional<StockSize> size, int count) {
    /// The occasion of a need: its first wish for stock, or else one plant of any size now.
    public static Occasion of(Need need, YearWeek now) {
        return need.wishes().stream()
                .map(WeighedWish::wish)
                .filter(Wish.InStock.class::isInstance)
                .map(Wish.InStock.class::cast)
                .findFirst()
                .map(wish -> of(wish, now))
                .orElseGet(() -> new Occasion(now, now, Optional.empty(), 1));
    }

    static Occasion of(Wish.InStock wish, YearWeek now) {
        return new Occasion(now, wish.by().orElse(now), wish.size(), wish.count());
    }

    /// Whether an item of this size is what is asked for.
    public boolean takes(StockSize offered) {
        return size.isEmpty() || size.get().equals(offered);
    }
}
