package org.benchleaf.shared.rule;

import java.util.Optional;

/// What one rule says of one shipment.
///
/// @param match the rule and how the plant came under it
/// @param reach how the rule comes to bear on the shipment
/// @param sale whether its word on selling holds on that day
/// @param receipt whether its word on bringing in holds on that day
public record Ruling(RuleMatch match, Reach reach, Phase sale, Phase receipt) {
    /// How a rule comes to bear on a shipment.
    public enum Reach {
        /// It holds where the plant goes.
        HERE,
        /// It holds in a county of the state, and the county is not given.
        SOME_COUNTY,
        /// The plant leaves its area: a quarantine.
        LEAVING,
        /// The plant comes into, or stays in, the area of a quarantine.
        INSIDE
    }

    /// The standing for a sale that day.
    public Optional<SaleStanding> saleStanding() {
        return counts() && sale == Phase.IN_FORCE ? match.effective() : Optional.empty();
    }

    /// The standing for bringing it in that day.
    public Optional<SaleStanding> receiptStanding() {
        return counts() && receipt == Phase.IN_FORCE ? match.effective() : Optional.empty();
    }

    /// Whether it bears on the shipment itself, and does not only point at what to ask or know.
    private boolean counts() {
        return reach == Reach.HERE || reach == Reach.LEAVING;
    }

    boolean isUnclear() {
        return match.manner() == Manner.UNCLEAR
                && counts()
                && receipt == Phase.IN_FORCE
                && match.standing() != SaleStanding.ADVISED_AGAINST;
    }
}
