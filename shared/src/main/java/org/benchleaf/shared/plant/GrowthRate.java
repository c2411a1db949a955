package org.benchleaf.shared.plant;

import org.benchleaf.shared.Term;

/// How fast a plant grows.
public enum GrowthRate implements Term {
    SLOW("slow"),
    MEDIUM("medium"),
    FAST("fast");

    private final String term;

    GrowthRate(String term) {
        this.term = term;
    }

    @Override
    public String term() {
        return term;
    }
}
