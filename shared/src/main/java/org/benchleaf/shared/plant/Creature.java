package org.benchleaf.shared.plant;

import org.benchleaf.shared.Term;

/// Whom a plant can hurt.
public enum Creature implements Term {
    PEOPLE("people"),
    CHILDREN("children"),
    DOGS("dogs"),
    CATS("cats"),
    HORSES("horses"),
    LIVESTOCK("livestock"),
    BIRDS("birds"),
    GARDENS("gardens");

    private final String term;

    Creature(String term) {
        this.term = term;
    }

    @Override
    public String term() {
        return term;
    }
}
