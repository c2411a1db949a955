package org.benchleaf.shared.site;

import org.benchleaf.shared.Term;

/// The mineral texture of a soil, in three steps.
public enum SoilTexture implements Term {
    SAND("sand"),
    LOAM("loam"),
    CLAY("clay");

    private final String term;

    SoilTexture(String term) {
        this.term = term;
    }

    @Override
    public String term() {
        return term;
    }
}
