package org.benchleaf.shared.plant;

import org.benchleaf.shared.Term;

/// How widely a plant is grown and sold, the widest first.
public enum Grown implements Term {
    STAPLE("staple"),
    COMMON("common"),
    UNCOMMON("uncommon"),
    RARE("rare");

    private final String term;

    Grown(String term) {
        this.term = term;
    }

    @Override
    public String term() {
        return term;
    }
}
