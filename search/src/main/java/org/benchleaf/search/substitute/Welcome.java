package org.benchleaf.search.substitute;

import java.util.List;
import java.util.Set;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.shared.plant.Hazard;
import org.benchleaf.shared.rule.RuleKind;
import org.benchleaf.shared.rule.RuleMatch;

/// Whether a plant is one that gardens are better without: a sale rule of any place names it, or it is known to
/// spread where it is not at home. A plant at home here that suckers is not meant.
public final class Welcome {
    private Welcome() {}

    public static boolean isUnwelcome(Facts facts) {
        return isRuled(facts) || spreadsAbroad(facts);
    }

    /// Whether some state prohibits, restricts or advises against it.
    static boolean isRuled(Facts facts) {
        return facts.value(Attributes.SALE_RULES).stream()
                .flatMap(rules -> rules.matches().stream())
                .anyMatch(Welcome::isAgainst);
    }

    /// A rule that names a whole genus is about a pest of it, not about a plant that runs wild.
    private static boolean isAgainst(RuleMatch match) {
        return match.kind() == RuleKind.SALE
                && match.effective().isPresent()
                && match.listedAs().indexOf(' ') > 0;
    }

    static boolean spreadsAbroad(Facts facts) {
        boolean spreads = facts.value(Attributes.CAUTIONS).orElse(List.of()).stream()
                .anyMatch(caution -> caution.hazard() == Hazard.SPREADS);
        return spreads && facts.value(Attributes.NATIVE_STATES).orElse(Set.of()).isEmpty();
    }
}
