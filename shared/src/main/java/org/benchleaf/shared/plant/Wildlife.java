package org.benchleaf.shared.plant;

import org.benchleaf.shared.Term;

/// What a plant gives to animals.
public enum Wildlife implements Term {
    NECTAR("nectar"),
    POLLEN("pollen"),
    LARVAL_HOST("larval host"),
    BIRD_FOOD("bird food"),
    COVER("cover"),
    NESTING("nesting");

    private final String term;

    Wildlife(String term) {
        this.term = term;
    }

    @Override
    public String term() {
        return term;
    }
}
