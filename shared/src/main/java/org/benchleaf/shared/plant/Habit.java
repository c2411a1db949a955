package org.benchleaf.shared.plant;

import org.benchleaf.shared.Term;

/// The outline of a grown plant.
public enum Habit implements Term {
    COLUMNAR("columnar"),
    PYRAMIDAL("pyramidal"),
    OVAL("oval"),
    ROUNDED("rounded"),
    VASE("vase"),
    SPREADING("spreading"),
    WEEPING("weeping"),
    UPRIGHT("upright"),
    MOUNDED("mounded"),
    ARCHING("arching"),
    CLUMP("clump"),
    MAT("mat"),
    FOUNTAIN("fountain"),
    CLIMBING("climbing"),
    MULTISTEM("multistem"),
    ROSETTE("rosette"),
    IRREGULAR("irregular");

    private final String term;

    Habit(String term) {
        this.term = term;
    }

    @Override
    public String term() {
        return term;
    }
}
