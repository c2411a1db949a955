package org.benchleaf.search.fit;

import java.util.Optional;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.site.Juglone;
import org.benchleaf.shared.site.Moisture;
import org.benchleaf.shared.site.Tolerance;

/// Whether a plant bears a stress of the site: medium or high tolerance does.
final class StressJudge {
    private StressJudge() {}

    static Reason judge(Wish.Bears wish, Facts facts) {
        return switch (wish.stress()) {
            case DROUGHT -> bearsOrLikes(wish, facts, facts.fact(Attributes.DROUGHT_TOLERANCE), Moisture.DRY);
            case WET_FEET -> bearsOrLikes(wish, facts, facts.fact(Attributes.WET_TOLERANCE), Moisture.WET);
            case SALT_IN_SOIL -> bears(wish, facts.fact(Attributes.SALT_SOIL));
            case SALT_SPRAY -> bears(wish, facts.fact(Attributes.SALT_SPRAY));
            case COMPACTION -> bears(wish, facts.fact(Attributes.COMPACTION));
            case JUGLONE ->
                FitJudge.when(
                        wish, facts.fact(Attributes.JUGLONE), juglone -> FitJudge.so(juglone == Juglone.TOLERANT));
        };
    }

    private static Reason bears(Wish wish, Optional<Fact<Tolerance>> fact) {
        return FitJudge.when(wish, fact, tolerance -> FitJudge.steps(Tolerance.MEDIUM.ordinal() - tolerance.ordinal()));
    }

    /// A plant that does well in dry soil bears drought, even where nobody rated it; one that does not may still.
    private static Reason bearsOrLikes(Wish wish, Facts facts, Optional<Fact<Tolerance>> fact, Moisture liked) {
        if (fact.isPresent()) {
            return bears(wish, fact);
        }
        return facts.fact(Attributes.MOISTURE)
                .filter(moisture -> moisture.value().contains(liked))
                .<Reason>map(moisture -> new Reason.Met(wish, FitJudge.seen(moisture)))
                .orElseGet(() -> new Reason.Unknown(wish));
    }
}
