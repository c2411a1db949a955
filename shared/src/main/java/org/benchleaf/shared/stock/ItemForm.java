package org.benchleaf.shared.stock;

import org.benchleaf.shared.Term;

/// The shape a plant is grown into for sale.
public enum ItemForm implements Term {
    REGULAR("regular"),
    MULTI_STEM("multi-stem"),
    TREE_FORM("tree form"),
    CLUMP("clump"),
    MALE_AND_FEMALE_IN_ONE_POT("male and female in one pot"),
    WEEPING_ON_A_STEM("weeping on a stem");

    private final String term;

    ItemForm(String term) {
        this.term = term;
    }

    @Override
    public String term() {
        return term;
    }
}
