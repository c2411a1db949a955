package org.benchleaf.shared.plant;

import org.benchleaf.shared.Term;

/// How much a plant's flowers or leaves scent the air.
public enum Fragrance implements Term {
    NONE("none"),
    LIGHT("light"),
    STRONG("strong");

    private final String term;

    Fragrance(String term) {
        this.term = term;
    }

    @Override
    public String term() {
        return term;
    }
}
