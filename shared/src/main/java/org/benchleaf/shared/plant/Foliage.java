package org.benchleaf.shared.plant;

import org.benchleaf.shared.Term;

/// What becomes of the leaves in winter; herbaceous plants die back to the ground.
public enum Foliage implements Term {
    DECIDUOUS("deciduous"),
    SEMI_EVERGREEN("semi-evergreen"),
    EVERGREEN("evergreen"),
    HERBACEOUS("herbaceous");

    private final String term;

    Foliage(String term) {
        this.term = term;
    }

    @Override
    public String term() {
        return term;
    }
}
