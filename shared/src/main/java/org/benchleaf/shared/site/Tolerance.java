package org.benchleaf.shared.site;

import org.benchleaf.shared.Term;

/// How much of a stress a plant bears, in four steps.
public enum Tolerance implements Term {
    NONE("none"),
    LOW("low"),
    MEDIUM("medium"),
    HIGH("high");

    private final String term;

    Tolerance(String term) {
        this.term = term;
    }

    @Override
    public String term() {
        return term;
    }
}
