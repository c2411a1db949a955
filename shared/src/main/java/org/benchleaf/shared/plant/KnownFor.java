package org.benchleaf.shared.plant;

import org.benchleaf.shared.Term;

/// What a plant is recommended for before others: the first that a plantsman names when somebody asks for it. A
/// plant may bear wet ground and be no plant for wet ground.
public enum KnownFor implements Term {
    SHADE("shade"),
    DRY_SHADE("dry shade"),
    DROUGHT("drought"),
    WET_GROUND("wet ground"),
    CLAY("clay"),
    CITY("city"),
    SALT("salt"),
    WALNUT("walnut"),
    DEER("deer"),
    FLOWERS("flowers"),
    FOLIAGE("foliage"),
    FALL_COLOR("fall color"),
    FRUIT("fruit"),
    BARK("bark"),
    FRAGRANCE("fragrance"),
    POLLINATORS("pollinators"),
    BIRDS("birds"),
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
    NATURALIZING("naturalizing"),
    LIVING_WALL("living wall");

    private final String term;

    KnownFor(String term) {
        this.term = term;
    }

    @Override
    public String term() {
        return term;
    }
}
