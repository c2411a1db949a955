package org.benchleaf.shared.plant;

import org.benchleaf.shared.Term;

/// What can hurt.
public enum Hazard implements Term {
    TOXIC("toxic"),
    IRRITANT("irritant"),
    THORNS("thorns"),
    POLLEN("pollen"),
    SPREADS("spreads"),
    WEIGHT("weight");

    private final String term;

    Hazard(String term) {
        this.term = term;
    }

    @Override
    public String term() {
        return term;
    }
}
