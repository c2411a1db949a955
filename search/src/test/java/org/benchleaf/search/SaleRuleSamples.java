package org.benchleaf.search;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.shared.fact.Region;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.rule.Manner;
import org.benchleaf.shared.rule.PlantRules;
import org.benchleaf.shared.rule.RuleArea;
import org.benchleaf.shared.rule.RuleDates;
import org.benchleaf.shared.rule.RuleKind;
import org.benchleaf.shared.rule.RuleMatch;
import org.benchleaf.shared.rule.SaleStanding;

/// What lists of sale rules may say of a plant, for tests.
public final class SaleRuleSamples {
    private static final LocalDate COMPILED = LocalDate.of(2026, 11, 25);
    private static final Set<Region> COVERED = Set.of(new Region("US-PA"), new Region("US-NY"), new Region("US-MA"));

    private SaleRuleSamples() {}

    public static Fact<PlantRules> fact(PlantRules said) {
        return new Fact<>(Attributes.SALE_RULES, said, new Source("a list"), false);
    }

    public static PlantRules said(RuleMatch... matches) {
        return new PlantRules(List.of(matches), COVERED, COMPILED);
    }

    /// @param receipt first day without receipt, or blank
    /// @param sale first day without sale, or blank
    public static RuleMatch rule(String area, SaleStanding standing, Manner manner, String receipt, String sale) {
        return new RuleMatch(
                area + " " + standing,
                RuleKind.SALE,
                RuleArea.read(area).orThrow(),
                standing,
                manner,
                "Planta",
                new RuleDates(Optional.empty(), day(receipt), day(sale), Optional.empty()),
                "a notice",
                new Source("a gazette"),
                COMPILED);
    }

    private static Optional<LocalDate> day(String text) {
        return text.isBlank() ? Optional.empty() : Optional.of(LocalDate.parse(text));
    }

    static PlantRules said(Random random) {
        List<RuleMatch> matches = new ArrayList<>();
        for (String area : List.of("PA", "NY", "NY / Suffolk", "MA")) {
            if (random.nextInt(3) == 0) {
                matches.add(rule(
                        area,
                        SaleStanding.values()[random.nextInt(3)],
                        Manner.values()[random.nextInt(Manner.values().length)],
                        random.nextBoolean() ? "" : "2026-01-01",
                        random.nextBoolean() ? "" : "2027-01-01"));
            }
        }
        return said(matches.toArray(RuleMatch[]::new));
    }
}
