package org.benchleaf.shared.stock;

import org.benchleaf.shared.Term;

/// How the roots of a field-grown plant come.
public enum RootPackage implements Term {
    BALLED_AND_BURLAPPED("B&B"),
    BARE_ROOT("bare root"),
    CONTAINER("container");

    private final String term;

    RootPackage(String term) {
        this.term = term;
    }

    @Override
    public String term() {
        return term;
    }
}
