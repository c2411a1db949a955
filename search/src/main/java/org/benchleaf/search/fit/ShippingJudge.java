package org.benchleaf.search.fit;

import java.util.Optional;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.rule.PlantRules;

/// Whether a plant may be sold and shipped to a place on a day. A place that no list covers, or a name that
/// does not say enough, is not known: never "allowed".
final class ShippingJudge {
    private ShippingJudge() {}

    static Reason judge(Wish.ShipTo wish, Facts facts) {
        Optional<Fact<PlantRules>> fact = facts.fact(Attributes.SALE_RULES);
        if (fact.isEmpty()) {
            return new Reason.Unknown(wish);
        }
        Reason.Seen seen = FitJudge.seen(fact.get());
        return switch (fact.get().value().at(wish.shipment()).answer()) {
            case BARRED -> new Reason.Missed(wish, seen, new Reason.Shortfall.NotSo());
            case ON_CONDITION, ADVISED_AGAINST, NO_RULE -> new Reason.Met(wish, seen);
            case UNCLEAR, NOT_COVERED -> new Reason.Unknown(wish);
        };
    }
}
