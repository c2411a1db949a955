package org.benchleaf.catalog.rules;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.benchleaf.catalog.intake.Finding;

/// A list of sale rules as read from a file; loading it replaces the earlier list of the same name, which is kept.
///
/// @param name the file's name without its ending
/// @param rules rows that were understood
/// @param findings rows that were not, and what is odd about the file
public record RuleList(String name, List<SaleRule> rules, List<Finding> findings) {
    public RuleList {
        rules = List.copyOf(rules);
        findings = List.copyOf(findings);
    }

    /// Whether some row could not be read: such a list is not loaded, for half a list of law misleads.
    public boolean isBroken() {
        return rules.isEmpty()
                || findings.stream().anyMatch(finding -> finding.outcome() == Finding.Outcome.ROW_LEFT_OUT);
    }

    /// The newest day on which a row was compiled.
    public Optional<LocalDate> compiledOn() {
        return rules.stream().map(SaleRule::compiledOn).max(Comparator.naturalOrder());
    }
}
