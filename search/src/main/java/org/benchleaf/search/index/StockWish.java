package org.benchleaf.search.index;

import org.benchleaf.search.fit.Occasion;
import org.benchleaf.search.fit.Outcome;
import org.benchleaf.search.fit.Standing;
import org.benchleaf.shared.need.Wish;

/// The outcome of a wish for stock or price from packed stock: the same that the judge finds in the catalog's.
sealed interface StockWish {
    /// Any size will do.
    int ANY = -2;

    int outcome(int slot);

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
        public int outcome(int slot) {
            Lots lots = stock.lots();
            int best = 0;
            int sum = 0;
            int item = -1;
            int start = stock.start(slot);
            for (int lot = start; lot < start + stock.length(slot); lot++) {
                if (lots.item()[lot] != item) {
                    item = lots.item()[lot];
                    sum = 0;
                }
                if ((size == ANY || lots.size()[lot] == size) && lots.ready()[lot] <= by) {
                    sum += lots.count()[lot];
                    best = Math.max(best, sum);
                }
            }
            return Outcome.ofCount(best, asked);
        }
    }

    /// The cheapest item that can be delivered, or else the cheapest of the size.
    record Cheap(StockColumns stock, int size, int by, int asked, int currency, long most) implements StockWish {
        @Override
        public int outcome(int slot) {
            Lots lots = stock.lots();
            long cheapest = Long.MAX_VALUE;
            long deliverable = Long.MAX_VALUE;
            int sum = 0;
            int item = -1;
            int start = stock.start(slot);
            for (int lot = start; lot < start + stock.length(slot); lot++) {
                if (lots.item()[lot] != item) {
                    item = lots.item()[lot];
                    sum = 0;
                }
                boolean priced = lots.price()[lot] != StockColumns.NO_PRICE && lots.currency()[lot] == currency;
                if (priced && (size == ANY || lots.size()[lot] == size)) {
                    sum += lots.ready()[lot] <= by ? lots.count()[lot] : 0;
                    cheapest = Math.min(cheapest, lots.price()[lot]);
                    deliverable = sum >= asked ? Math.min(deliverable, lots.price()[lot]) : deliverable;
                }
            }
            long price = deliverable == Long.MAX_VALUE ? cheapest : deliverable;
            return price == Long.MAX_VALUE ? Outcome.UNKNOWN : Outcome.ofPrice(price, most);
        }
    }

    /// Whether a plant can be had at all.
    static Standing standing(StockColumns stock, int slot, int now) {
        Lots lots = stock.lots();
        Standing best = Standing.NONE;
        int start = stock.start(slot);
        for (int lot = start; lot < start + stock.length(slot); lot++) {
            if (lots.count()[lot] > 0) {
                if (lots.ready()[lot] <= now) {
                    return Standing.FREE_NOW;
                }
                best = Standing.COMING_ON;
            }
        }
        return best;
    }
}
