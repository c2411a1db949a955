package org.benchleaf.shared.plant;

import org.benchleaf.shared.Term;

/// Whether a plant sets fruit with its own pollen.
public enum SelfFertility implements Term {
    YES("yes"),
    NO("no"),
    PARTLY("partly");

    private final String term;

    SelfFertility(String term) {
        this.term = term;
    }

    @Override
    public String term() {
        return term;
    }
}
