package org.benchleaf.shared.rule;

import org.benchleaf.shared.Term;

/// How a plant came to stand under a rule.
public enum Manner implements Term {
    /// The rule names its taxon.
    NAMED("named"),
    /// The rule names it by a synonym or in another spelling.
    OTHER_NAME("other name"),
    /// It is a hybrid of a taxon that the rule names.
    HYBRID("hybrid"),
    /// The rule exempts it by name under a condition; it is then treated as restricted.
    CONDITIONALLY_EXEMPT("conditionally exempt"),
    /// The rule exempts it by name.
    EXEMPT("exempt"),
    /// Its name does not say enough: a cultivar under its genus alone, a hybrid of unknown parents.
    UNCLEAR("unclear");

    private final String term;

    Manner(String term) {
        this.term = term;
    }

    @Override
    public String term() {
        return term;
    }
}
