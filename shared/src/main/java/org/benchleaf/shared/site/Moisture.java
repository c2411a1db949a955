package org.benchleaf.shared.site;

import org.benchleaf.shared.Term;

/// How wet the soil is that a plant grows well in.
public enum Moisture implements Term {
    DRY("dry"),
    MEDIUM("medium"),
    MOIST("moist"),
    WET("wet");

    private final String term;

    Moisture(String term) {
        this.term = term;
    }

    @Override
    public String term() {
        return term;
    }
}
