package org.benchleaf.content;

import java.util.Optional;
import org.benchleaf.shared.measure.Money;

/// How much of its stock a shop tells.
///
/// @param counts how exactly it says how many there are
/// @param prices whether it says what they cost
/// @param tier the kind of customer whose prices are told; the catalog's own when empty
public record Telling(Counts counts, boolean prices, Optional<PriceTier> tier) {
    /// Everything.
    public static final Telling ALL = new Telling(Counts.EXACT, true, Optional.empty());

    /// Fewer than this are "few". Common practice, no source: a landscaper's smallest order of one kind.
    public static final int FEW = 10;

    /// How exactly.
    public enum Counts {
        /// 60 now.
        EXACT,
        /// Plenty now.
        COARSE,
        /// Here now.
        HIDDEN
    }

    /// Everything, at the prices of a kind of customer.
    public static Telling at(Optional<PriceTier> tier) {
        return new Telling(Counts.EXACT, true, tier);
    }

    /// What something costs the one who asks; empty when that is not told.
    ///
    /// @param price as the catalog has it
    public Optional<Money> price(Money price) {
        return prices ? Optional.of(tier.map(one -> one.of(price)).orElse(price)) : Optional.empty();
    }

    public boolean isExact() {
        return counts == Counts.EXACT;
    }

    /// The end of the key of the words for so many.
    String key(int count) {
        return switch (counts) {
            case EXACT -> "";
            case COARSE -> count < FEW ? ".few" : ".plenty";
            case HIDDEN -> ".some";
        };
    }
}
