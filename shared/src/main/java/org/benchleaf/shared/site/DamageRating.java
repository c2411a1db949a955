package org.benchleaf.shared.site;

import org.benchleaf.shared.Term;

/// How often an animal damages a plant, in the four steps A to D of Rutgers NJAES E271; the fact's source says whose
/// list it is, for a rating holds only where it was made.
public enum DamageRating implements Term {
    RARELY("rarely"),
    SELDOM("seldom"),
    OCCASIONALLY("occasionally"),
    FREQUENTLY("frequently");

    private final String term;

    DamageRating(String term) {
        this.term = term;
    }

    @Override
    public String term() {
        return term;
    }
}
