package org.benchleaf.shared.plant;

import org.benchleaf.shared.Term;

/// What a plant is looked at for.
public enum Season implements Term {
    FLOWER("flower"),
    FOLIAGE("foliage"),
    FALL_COLOR("fall color"),
    FRUIT("fruit"),
    STEM("stem");

    private final String term;

    Season(String term) {
        this.term = term;
    }

    @Override
    public String term() {
        return term;
    }
}
