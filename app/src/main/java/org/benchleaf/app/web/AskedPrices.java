package org.benchleaf.app.web;

import org.benchleaf.content.Telling;
import org.benchleaf.search.need.NeedReading;
import org.benchleaf.search.need.OtherReading;
import org.benchleaf.search.need.Understood;
import org.benchleaf.shared.need.Need;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;

/// What somebody says of prices, said by the prices that they see, as the catalog's prices.
record AskedPrices(Telling telling) {
    NeedReading of(NeedReading read) {
        return telling.tier().isEmpty()
                ? read
                : new NeedReading(
                        new Need(read.need().wishes().stream().map(this::of).toList()),
                        read.understood().stream()
                                .map(one -> new Understood(one.words(), of(one.wish())))
                                .toList(),
                        read.notUnderstood(),
                        read.notes(),
                        read.others().stream()
                                .map(one -> new OtherReading(
                                        one.words(),
                                        one.wishes().stream().map(this::of).toList()))
                                .toList());
    }

    private WeighedWish of(WeighedWish wish) {
        return new WeighedWish(of(wish.wish()), wish.weight(), wish.fixed(), wish.counting());
    }

    private Wish of(Wish wish) {
        return wish instanceof Wish.AtMostPrice(var most)
                ? telling.tier()
                        .<Wish>map(tier -> new Wish.AtMostPrice(tier.asked(most)))
                        .orElse(wish)
                : wish;
    }
}
