package org.benchleaf.shared.plant;

import org.benchleaf.shared.Term;

/// What a plant is put to in a landscape.
public enum Use implements Term {
    HEDGE("hedge"),
    SCREEN("screen"),
    FOUNDATION("foundation"),
    MASSING("massing"),
    GROUNDCOVER("groundcover"),
    SPECIMEN("specimen"),
    CONTAINER("container"),
    RAIN_GARDEN("rain garden"),
    SLOPE("slope"),
    STREET("street"),
    SHADE_TREE("shade tree"),
    WOODLAND("woodland"),
    BORDER("border"),
    EDGING("edging"),
    CUT_FLOWER("cut flower"),
    POLLINATOR_GARDEN("pollinator garden"),
    NATURALIZING("naturalizing"),
    LIVING_WALL("living wall");

    private final String term;

    Use(String term) {
        this.term = term;
    }

    @Override
    public String term() {
        return term;
    }
}
