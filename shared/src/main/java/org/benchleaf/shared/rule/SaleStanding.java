package org.benchleaf.shared.rule;

import org.benchleaf.shared.Term;

/// How strictly a sale is ruled; the strictest first.
public enum SaleStanding implements Term {
    /// It may not be sold there.
    PROHIBITED("prohibited"),
    /// It may be sold under a condition, most often a printed notice.
    RESTRICTED("restricted"),
    /// It may be sold; planting it is advised against.
    ADVISED_AGAINST("advisory");

    private final String term;

    SaleStanding(String term) {
        this.term = term;
    }

    @Override
    public String term() {
        return term;
    }
}
