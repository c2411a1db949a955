package org.benchleaf.content;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.shared.measure.Money;

/// What a kind of customer pays, by the price of the catalog, which is wholesale.
///
/// @param name of the kind of customer: `landscaper`
/// @param factor times the price, above 0 and at most 100
public record PriceTier(String name, BigDecimal factor) {
    private static final Pattern WRITTEN = Pattern.compile("(\\S.*?)\\s+(\\d{1,3}(?:\\.\\d{1,4})?)");
    private static final List<Long> ROUND = List.of(10_000L, 1_000L, 500L, 100L, 50L, 10L, 5L);
    private static final BigDecimal MOST = BigDecimal.valueOf(100);

    public PriceTier {
        if (factor.signum() <= 0 || factor.compareTo(MOST) > 0) {
            throw new IllegalArgumentException("a factor is above 0 and at most 100; got " + factor + " for " + name);
        }
    }

    /// Reads `landscaper 1.15, retail 2.2`; an empty text is no tiers.
    ///
    /// @return empty when a piece is no name with a factor above 0 and at most 100
    public static Optional<List<PriceTier>> read(String text) {
        List<PriceTier> tiers = new ArrayList<>();
        for (String piece : text.split(",")) {
            Matcher matcher = WRITTEN.matcher(piece.strip());
            if (piece.isBlank()) {
                continue;
            }
            if (!matcher.matches()) {
                return Optional.empty();
            }
            BigDecimal factor = new BigDecimal(matcher.group(2));
            if (factor.signum() == 0 || factor.compareTo(MOST) > 0) {
                return Optional.empty();
            }
            tiers.add(new PriceTier(matcher.group(1), factor));
        }
        return Optional.of(List.copyOf(tiers));
    }

    /// The price of one, rounded to the cent, halves up.
    public Money of(Money price) {
        long minor = BigDecimal.valueOf(price.minor())
                .multiply(factor)
                .setScale(0, RoundingMode.HALF_UP)
                .longValueExact();
        return new Money(minor, price.currency());
    }

    /// The highest price of the catalog that is told as no more than this.
    public Money asked(Money most) {
        long minor = BigDecimal.valueOf(2 * most.minor() + 1)
                        .divide(factor.multiply(BigDecimal.TWO), 0, RoundingMode.CEILING)
                        .longValueExact()
                - 1;
        return new Money(minor, most.currency());
    }

    /// The roundest of the amounts that [#asked] makes the same: what was asked is told as it was said.
    ///
    /// @param asked as [#asked] made it
    public Money told(Money asked) {
        long from = of(asked).minor();
        long to = of(new Money(asked.minor() + 1, asked.currency())).minor() - 1;
        for (long step : ROUND) {
            if (to / step * step >= from) {
                return new Money(to / step * step, asked.currency());
            }
        }
        return of(asked);
    }

    /// `landscaper 1.15`
    @Override
    public String toString() {
        return name + " " + factor.toPlainString();
    }
}
