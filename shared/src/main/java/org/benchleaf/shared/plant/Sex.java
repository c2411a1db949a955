package org.benchleaf.shared.plant;

import org.benchleaf.shared.Term;

/// Which flowers a plant bears; sold plants of dioecious kinds are male or female.
public enum Sex implements Term {
    MALE("male"),
    FEMALE("female"),
    PERFECT("perfect"),
    MONOECIOUS("monoecious"),
    DIOECIOUS("dioecious");

    private final String term;

    Sex(String term) {
        this.term = term;
    }

    @Override
    public String term() {
        return term;
    }
}
