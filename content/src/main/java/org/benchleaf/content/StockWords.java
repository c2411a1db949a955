package org.benchleaf.content;

import java.util.Map;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.stock.Availability;
import org.benchleaf.shared.stock.ItemForm;
import org.benchleaf.shared.stock.StockSize;

/// What is for sale: sizes, counts and prices.
final class StockWords {
    private final Wording words;

    StockWords(Wording words) {
        this.words = words;
    }

    String money(Money money) {
        String amount = new Measures(words)
                .number(
                        "%,." + money.currency().getDefaultFractionDigits() + "f",
                        new java.math.BigDecimal(money.amount()));
        String code = money.currency().getCurrencyCode();
        String pattern = words.words().find("money." + code).orElseGet(() -> words.text("money.other"));
        // an amount stays on the line of its currency
        return words.words()
                .fill("money." + code, pattern, Map.of("amount", amount, "currency", code))
                .replace(' ', '\u00A0');
    }

    String size(StockSize size) {
        return new Measures(words).size(words.containers().text(size), size);
    }

    String availability(Availability availability) {
        return switch (availability) {
            case Availability.InStock(int count) ->
                words.text("stock.now" + words.telling().key(count), Map.of("count", words.count(count)));
            case Availability.From(YearWeek week, int count) ->
                words.text(
                        "stock.from" + words.telling().key(count),
                        Map.of("count", words.count(count), "week", words.week(week)));
            case Availability.SoldOut() -> words.text("stock.sold-out");
            case Availability.Withdrawn() -> words.text("stock.withdrawn");
        };
    }

    String more(YearWeek week, int count) {
        return words.text(
                "stock.more" + words.telling().key(count),
                Map.of("count", words.count(count), "week", words.week(week)));
    }

    String size(StockSize size, ItemForm form) {
        return form == ItemForm.REGULAR
                ? size(size)
                : words.text("size.form", Map.of("size", size(size), "form", words.term(form)));
    }

    String listedSize(StockSize size, ItemForm form) {
        String plain = size(size, form);
        return size instanceof StockSize.Caliper caliper
                ? words.text(
                        "size.caliper", Map.of("size", plain, "inches", Integer.toString(caliper.measuredAtInches())))
                : plain;
    }
}
