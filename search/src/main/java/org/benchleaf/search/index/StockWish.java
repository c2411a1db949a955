package org.benchleaf.search.index;

import java.util.Optional;
import org.benchleaf.search.fit.Occasion;
import org.benchleaf.search.fit.Outcome;
import org.benchleaf.shared.need.Wish;

/// The outcomes of a wish for stock or price from packed stock: the same that the judge finds in the catalog's.
sealed interface StockWish {
    /// Any size will do.
    int ANY = -2;

    /// The outcomes of a run of plants.
    ///
    /// @param slots where their stock is
    /// @param from first plant in `slots`
    /// @param count how many
    /// @param outcomes receives them from index 0 on
    void outcomes(int[] slots, int from, int count, int[] outcomes);

    /// A wish about stock or price; empty for any other.
    static Optional<StockWish> of(Wish wish, Occasion occasion, StockColumns stock) {
        return switch (wish) {
            case Wish.InStock inStock -> Optional.of(of(inStock, occasion, stock));
            case Wish.AtMostPrice price -> Optional.of(of(price, occasion, stock));
            default -> Optional.empty();
        };
    }

    static StockWish of(Wish.InStock wish, Occasion occasion, StockColumns stock) {
        int size = wish.size().map(stock::sizeCode).orElse(ANY);
        int by = StockColumns.week(wish.by().orElse(occasion.now()));
        return new Enough(stock, size, by, wish.count());
    }

    static StockWish of(Wish.AtMostPrice wish, Occasion occasion, StockColumns stock) {
        return new Cheap(
                stock,
                occasion.size().map(stock::sizeCode).orElse(ANY),
                StockColumns.week(occasion.by()),
                occasion.count(),
                stock.currencyCode(wish.price().currency()),
                wish.price().minor());
    }

    /// Enough of one item.
    record Enough(StockColumns stock, int size, int by, int asked) implements StockWish {
        @Override
        public void outcomes(int[] slots, int from, int count, int[] outcomes) {
            int[] first = stock.firstOf(size);
            int nothing = Outcome.ofCount(0, asked);
            for (int i = 0; i < count; i++) {
                int slot = slots[from + i];
                int lot = slot < first.length ? first[slot] : -1;
                outcomes[i] = lot < 0 ? nothing : Outcome.ofCount(most(lot, stock.end(slot)), asked);
            }
        }

        /// The most of one item that a plant has.
        int most(int slot) {
            int[] first = stock.firstOf(size);
            return slot < first.length && first[slot] >= 0 ? most(first[slot], stock.end(slot)) : 0;
        }

        private int most(int from, int end) {
            Lots lots = stock.lots();
            int best = 0;
            int sum = 0;
            int item = -1;
            for (int lot = from; lot < end; lot++) {
                if (lots.item()[lot] != item) {
                    item = lots.item()[lot];
                    sum = 0;
                }
                if ((lots.size()[lot] == size || size == ANY) && lots.ready()[lot] <= by) {
                    sum += lots.count()[lot];
                    best = Math.max(best, sum);
                }
            }
            return best;
        }
    }

    /// The cheapest item that can be delivered, or else the cheapest of the size.
    record Cheap(StockColumns stock, int size, int by, int asked, int currency, long most) implements StockWish {
        private static final long NONE = Long.MAX_VALUE;

        @Override
        public void outcomes(int[] slots, int from, int count, int[] outcomes) {
            int[] first = stock.firstOf(size);
            for (int i = 0; i < count; i++) {
                int slot = slots[from + i];
                int lot = slot < first.length ? first[slot] : -1;
                long price = lot < 0 ? NONE : price(lot, stock.end(slot));
                outcomes[i] = price == NONE ? Outcome.UNKNOWN : Outcome.ofPrice(price, most);
            }
        }

        /// The price that counts for a plant; `Long.MAX_VALUE` without one.
        long price(int slot) {
            int[] first = stock.firstOf(size);
            return slot < first.length && first[slot] >= 0 ? price(first[slot], stock.end(slot)) : NONE;
        }

        private long price(int from, int end) {
            Lots lots = stock.lots();
            long cheapest = NONE;
            long deliverable = NONE;
            int sum = 0;
            int item = -1;
            for (int lot = from; lot < end; lot++) {
                if (lots.item()[lot] != item) {
                    item = lots.item()[lot];
                    sum = 0;
                }
                long price = lots.price()[lot];
                boolean priced = price != StockColumns.NO_PRICE && lots.currency()[lot] == currency;
                if (priced && (lots.size()[lot] == size || size == ANY)) {
                    sum += lots.ready()[lot] <= by ? lots.count()[lot] : 0;
                    cheapest = Math.min(cheapest, price);
                    deliverable = sum >= asked ? Math.min(deliverable, price) : deliverable;
                }
            }
            return deliverable == NONE ? cheapest : deliverable;
        }
    }
}
