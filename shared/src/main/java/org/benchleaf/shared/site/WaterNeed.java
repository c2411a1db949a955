package org.benchleaf.shared.site;

import org.benchleaf.shared.Term;

/// Water needed once established.
public enum WaterNeed implements Term {
    LOW("low"),
    MEDIUM("medium"),
    HIGH("high");

    private final String term;

    WaterNeed(String term) {
        this.term = term;
    }

    @Override
    public String term() {
        return term;
    }
}
