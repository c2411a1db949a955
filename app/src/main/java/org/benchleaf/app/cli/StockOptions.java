package org.benchleaf.app.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import org.benchleaf.app.Refusal;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.rule.Destination;
import org.benchleaf.shared.rule.Shipment;
import org.benchleaf.shared.stock.StockSize;
import picocli.CommandLine.Option;

/// How many in which size by when, at what price, and where they go, as options.
final class StockOptions {
    @Option(names = "--count", paramLabel = "N", description = "so many in stock")
    private Optional<Integer> count = Optional.empty();

    @Option(names = "--size", paramLabel = "SIZE", description = "in this size, for example '#3'")
    private Optional<StockSize> size = Optional.empty();

    @Option(names = "--by", paramLabel = "DATE", description = "ready by the week of this date")
    private Optional<String> by = Optional.empty();

    @Option(names = "--max-price", paramLabel = "PRICE", description = "at most this a piece, in dollars")
    private Optional<String> maxPrice = Optional.empty();

    @Option(
            names = "--ship-to",
            paramLabel = "STATE",
            description =
                    "may be sold and shipped there, for example PA or 'Suffolk County, NY'; sale rules are judged")
    private Optional<String> shipTo = Optional.empty();

    @Option(
            names = "--ship-on",
            paramLabel = "DATE",
            description = "the day of shipping (default: the week of --by, else today)")
    private Optional<String> shipOn = Optional.empty();

    /// The wishes given.
    ///
    /// @param today the day of shipping when none is given
    /// @param home where the shop ships from
    List<Wish> wishes(LocalDate today, Optional<Destination> home) {
        List<Wish> wishes = new ArrayList<>();
        shipTo.ifPresent(text ->
                wishes.add(new Wish.ShipTo(new Shipment(Given.ok(Destination.read(text)), shipDay(today), home))));
        stock().ifPresent(wishes::add);
        maxPrice.ifPresent(
                text -> wishes.add(new Wish.AtMostPrice(Given.ok(Money.read(text, Currency.getInstance("USD"))))));
        return wishes;
    }

    private LocalDate shipDay(LocalDate today) {
        return shipOn.map(Given::day)
                .or(() -> by.map(text -> Given.ok(YearWeek.read(text)).monday()))
                .orElse(today);
    }

    private Optional<Wish> stock() {
        if (count.isEmpty() && size.isEmpty() && by.isEmpty()) {
            return Optional.empty();
        }
        int wanted = count.orElse(1);
        if (wanted < 1) {
            throw new Refusal(Problem.of("count.negative", Integer.toString(wanted)));
        }
        return Optional.of(new Wish.InStock(wanted, size, by.map(text -> Given.ok(YearWeek.read(text)))));
    }
}
