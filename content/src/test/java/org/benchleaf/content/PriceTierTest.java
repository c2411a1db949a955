package org.benchleaf.content;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.benchleaf.shared.measure.Money;
import org.junit.jupiter.api.Test;

class PriceTierTest {
    private static final PriceTier LANDSCAPER =
            PriceTier.read("landscaper 1.15").orElseThrow().getFirst();
    private static final PriceTier RETAIL =
            PriceTier.read("retail 2.2").orElseThrow().getFirst();

    @Test
    void halfACentIsRoundedUp() {
        assertThat(LANDSCAPER.of(Money.usDollars("18.50"))).isEqualTo(Money.usDollars("21.28"));
        assertThat(RETAIL.of(Money.usDollars("18.50"))).isEqualTo(Money.usDollars("40.70"));
    }

    @Test
    void whatWasAskedIsToldAsItWasSaid() {
        for (String asked : new String[] {"35.00", "20.00", "9.50", "125.00", "5.25"}) {
            for (PriceTier tier : new PriceTier[] {LANDSCAPER, RETAIL}) {
                assertThat(tier.told(tier.asked(Money.usDollars(asked))))
                        .as("%s for %s", asked, tier.name())
                        .isEqualTo(Money.usDollars(asked));
            }
        }
    }

    @Property
    void aPriceIsWithinWhatWasAskedWhenTheOneToldIs(
            @ForAll @IntRange(min = 1, max = 500_000) int price,
            @ForAll @IntRange(min = 1, max = 500_000) int most,
            @ForAll @IntRange(min = 1, max = 50_000) int factor) {
        PriceTier tier = new PriceTier("some", BigDecimal.valueOf(factor, 4));
        Money catalog = new Money(price, Money.usDollars("1").currency());
        Money asked = new Money(most, catalog.currency());
        assertThat(catalog.compareTo(tier.asked(asked)) <= 0)
                .isEqualTo(tier.of(catalog).compareTo(asked) <= 0);
    }
}
