package org.benchleaf.search.index;

import java.util.Optional;
import org.benchleaf.search.fit.Occasion;
import org.benchleaf.search.fit.Outcome;
import org.benchleaf.shared.need.Wish;

/// The outcomes of a wish for stock or price from packed stock: the same that the judge finds in the catalog's.
sealed interface StockWish {
    /// Any size will do.
    int ANY = -2;

    /// The outcome for the plant of a slot.
    int outcome(int slot);

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
        return new Enough(stock.mostOf(size, by), wish.count());
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
    ///
    /// @param most the most of one item by slot
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Enough(int[] most, int asked) implements StockWish {
        @Override
        public int outcome(int slot) {
            return Outcome.ofCount(most(slot), asked);
        }

        /// The most of one item that a plant has.
        int most(int slot) {
            return slot < most.length ? most[slot] : 0;
        }
    }

    /// The cheapest item that can be delivered, or else the cheapest of the size.
    record Cheap(StockColumns stock, int size, int by, int asked, int currency, long most) implements StockWish {
        private static final long NONE = Long.MAX_VALUE;

        @Override
        public int outcome(int slot) {
            long price = price(slot);
            return price == NONE ? Outcome.UNKNOWN : Outcome.ofPrice(price, most);
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
