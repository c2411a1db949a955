package org.benchleaf.search.fit;

import java.util.Optional;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.shared.measure.HardinessZone;
import org.benchleaf.shared.measure.ZoneRange;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.need.Reason.Shortfall;
import org.benchleaf.shared.need.Wish;

/// Whether a plant lives through the winters of a site, by half zones, and does well in its warmth.
final class HardinessJudge {
    /// How far above its cold end a plant without a stated warm end is taken to do well: three zones. Ours, no
    /// source; few plants of the trade span less.
    private static final int USUAL_SPAN = 6;

    private HardinessJudge() {}

    static Reason judge(Wish.HardyIn wish, Facts facts) {
        Optional<Fact<ZoneRange>> fact = facts.fact(Attributes.HARDINESS);
        if (fact.isPresent() && tooWarmToTell(fact.get().value(), wish.zone())) {
            return new Reason.Unknown(wish);
        }
        return FitJudge.when(wish, fact, range -> {
            int outside = range.halfZonesOutside(wish.zone());
            return outside == 0 ? Optional.empty() : Optional.of(new Shortfall.HalfZones(outside));
        });
    }

    private static boolean tooWarmToTell(ZoneRange range, HardinessZone site) {
        return !range.hasWarmLimit() && site.half() - range.coldest().half() > USUAL_SPAN;
    }
}
