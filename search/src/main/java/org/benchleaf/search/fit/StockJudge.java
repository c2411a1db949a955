package org.benchleaf.search.fit;

import java.util.Optional;
import java.util.stream.Collectors;
import org.benchleaf.catalog.model.ItemRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.need.Reason.Shortfall;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.stock.Availability;
import org.benchleaf.shared.stock.ItemForm;

/// Whether enough of one item can be had, and what it costs. Counts of different items are never added up: forty
/// plants for a job are forty alike.
final class StockJudge {
    private StockJudge() {}

    static Reason judge(Wish.InStock wish, PlantStock stock, Occasion occasion) {
        Occasion own = Occasion.of(wish, occasion.now());
        int best = stock.items().stream()
                .filter(item -> own.takes(item.size()))
                .mapToInt(item -> stock.freeBy(item.key(), own.by()))
                .max()
                .orElse(0);
        Reason.Seen seen = Reason.Seen.own(written(stock, occasion.now()));
        return best >= wish.count()
                ? new Reason.Met(wish, seen)
                : new Reason.Missed(wish, seen, new Shortfall.TooFew(wish.count() - best));
    }

    /// The cheapest item that can be delivered decides; where none can, the cheapest of the size.
    static Reason judge(Wish.AtMostPrice wish, PlantStock stock, Occasion occasion) {
        Optional<Money> price = cheapest(wish, stock, occasion, true).or(() -> cheapest(wish, stock, occasion, false));
        if (price.isEmpty()) {
            return new Reason.Unknown(wish);
        }
        Reason.Seen seen = Reason.Seen.own(price.get().toString());
        long over = price.get().minor() - wish.price().minor();
        return over <= 0 ? new Reason.Met(wish, seen) : new Reason.Missed(wish, seen, new Shortfall.TooDear(over));
    }

    private static Optional<Money> cheapest(
            Wish.AtMostPrice wish, PlantStock stock, Occasion occasion, boolean deliverable) {
        return stock.items().stream()
                .filter(item -> occasion.takes(item.size()))
                .filter(item -> !deliverable || stock.freeBy(item.key(), occasion.by()) >= occasion.count())
                .flatMap(item -> item.price().stream())
                .filter(price -> price.currency().equals(wish.price().currency()))
                .min(Money::compareTo);
    }

    static Standing standing(PlantStock stock, YearWeek now) {
        Standing best = Standing.NONE;
        for (ItemRecord item : stock.items()) {
            switch (stock.availability(item.key(), now)) {
                case Availability.InStock free -> {
                    return Standing.FREE_NOW;
                }
                case Availability.From later -> best = Standing.COMING_ON;
                case Availability.SoldOut none -> {}
                case Availability.Withdrawn none -> {}
            }
        }
        return best;
    }

    /// `12 × #3; 60 × #5 (2027-W15)`: what can be had now of each item, or first comes on and when.
    private static String written(PlantStock stock, YearWeek now) {
        String text = stock.items().stream()
                .flatMap(item -> written(item, stock.availability(item.key(), now)).stream())
                .collect(Collectors.joining("; "));
        return text.isEmpty() ? "0" : text;
    }

    private static Optional<String> written(ItemRecord item, Availability availability) {
        String what = item.form() == ItemForm.REGULAR
                ? item.size().toString()
                : item.size() + " " + item.form().term();
        return switch (availability) {
            case Availability.InStock(int count) -> Optional.of(count + " × " + what);
            case Availability.From(YearWeek week, int count) -> Optional.of(count + " × " + what + " (" + week + ")");
            case Availability.SoldOut() -> Optional.empty();
            case Availability.Withdrawn() -> Optional.empty();
        };
    }
}
