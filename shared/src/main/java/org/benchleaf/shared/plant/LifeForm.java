package org.benchleaf.shared.plant;

import org.benchleaf.shared.Term;

/// What kind of plant it is, in the words of the trade.
public enum LifeForm implements Term {
    TREE("tree"),
    SHRUB("shrub"),
    CONIFER("conifer"),
    GRASS("grass"),
    FERN("fern"),
    PERENNIAL("perennial"),
    GROUNDCOVER("groundcover"),
    VINE("vine"),
    BULB("bulb"),
    ANNUAL("annual");

    private final String term;

    LifeForm(String term) {
        this.term = term;
    }

    @Override
    public String term() {
        return term;
    }
}
