package org.benchleaf.shared.site;

import org.benchleaf.shared.Term;

/// How a plant stands the juglone of a walnut's roots.
public enum Juglone implements Term {
    TOLERANT("tolerant"),
    SENSITIVE("sensitive");

    private final String term;

    Juglone(String term) {
        this.term = term;
    }

    @Override
    public String term() {
        return term;
    }
}
