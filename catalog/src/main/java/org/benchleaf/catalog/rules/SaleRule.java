package org.benchleaf.catalog.rules;

import java.time.LocalDate;
import java.util.List;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.rule.RuleArea;
import org.benchleaf.shared.rule.RuleDates;
import org.benchleaf.shared.rule.RuleKind;
import org.benchleaf.shared.rule.SaleStanding;

/// One row of a list of sale rules.
///
/// @param id unique within its list, never given to another rule
/// @param kind sale, or quarantine of a pest's hosts
/// @param area where it holds
/// @param taxon a genus, a species, a rank below it, or one cultivar
/// @param alsoNamed synonyms, other spellings and hybrids that it takes in as well
/// @param cultivars whether cultivars of the taxon are taken in; they are unless the rule says otherwise
/// @param hybrids whether hybrids of the taxon are; they are unless the rule says otherwise
/// @param standing how strictly
/// @param dates from when
/// @param exempt plants let off by name
/// @param notice the notice to print, or a remark; may be empty
/// @param source who states it
/// @param compiledOn when the row was compiled
public record SaleRule(
        String id,
        RuleKind kind,
        RuleArea area,
        String taxon,
        List<String> alsoNamed,
        boolean cultivars,
        boolean hybrids,
        SaleStanding standing,
        RuleDates dates,
        List<Exemption> exempt,
        String notice,
        Source source,
        LocalDate compiledOn) {
    public SaleRule {
        alsoNamed = List.copyOf(alsoNamed);
        exempt = List.copyOf(exempt);
    }
}
