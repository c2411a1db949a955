package org.benchleaf.app.cli;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.Refusal;
import org.benchleaf.catalog.accounts.Role;
import org.benchleaf.catalog.accounts.StaffMember;
import org.benchleaf.content.PriceTier;
import org.benchleaf.content.Wording;
import org.benchleaf.shared.Problem;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/// Whose prices a customer pays.
final class TierOption {
    @Option(
            names = "--tier",
            paramLabel = "NAME",
            description =
                    "of a customer: whose prices they see, a name of the setting `tiers`; without it the catalog's")
    private @Nullable String tier;

    /// @throws Refusal when the shop has no such tier (`staff.tier.unknown`), or the role has no prices
    ///     (`staff.tier.staff`)
    Optional<String> of(Role role, Benchleaf benchleaf) {
        String asked = tier;
        if (asked == null) {
            return Optional.empty();
        }
        if (role != Role.CUSTOMER) {
            throw new Refusal(Problem.of("staff.tier.staff", asked));
        }
        List<String> tiers = benchleaf.settings().choices().tiers().stream()
                .map(PriceTier::name)
                .toList();
        if (!tiers.contains(asked)) {
            throw new Refusal(Problem.of("staff.tier.unknown", asked)
                    .with("tiers", tiers.isEmpty() ? "-" : String.join(", ", tiers)));
        }
        return Optional.of(asked);
    }

    /// What somebody is, in words.
    static String post(StaffMember member, Wording wording) {
        return member.tier()
                .map(tier ->
                        wording.text("staff.tier", Map.of("role", member.role().term(), "tier", tier)))
                .orElse(member.role().term());
    }
}
