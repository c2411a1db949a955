package org.benchleaf.shared.rule;

import org.benchleaf.shared.Term;

/// What a rule is about.
public enum RuleKind implements Term {
    /// Selling or bringing in: it holds where the plant is shipped to.
    SALE("sale"),
    /// A pest: hosts may leave the area only under a condition.
    QUARANTINE("quarantine");

    private final String term;

    RuleKind(String term) {
        this.term = term;
    }

    @Override
    public String term() {
        return term;
    }
}
