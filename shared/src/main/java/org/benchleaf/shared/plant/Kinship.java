package org.benchleaf.shared.plant;

import org.benchleaf.shared.Term;

/// How one plant of the catalog is related to another.
public enum Kinship implements Term {
    SMALLER_SISTER_OF("smaller sister of"),
    LARGER_SISTER_OF("larger sister of"),
    IMPROVED_OVER("improved over"),
    SPORT_OF("sport of"),
    SEEDLING_OF("seedling of"),
    SIMILAR_TO("similar to");

    private final String term;

    Kinship(String term) {
        this.term = term;
    }

    @Override
    public String term() {
        return term;
    }
}
