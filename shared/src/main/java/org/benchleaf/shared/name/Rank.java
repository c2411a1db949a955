package org.benchleaf.shared.name;

/// A rank below species, with the mark that is written before its epithet in roman type (ICN Art. 24).
public enum Rank {
    SUBSPECIES("subsp."),
    VARIETY("var."),
    FORM("f.");

    private final String mark;

    Rank(String mark) {
        this.mark = mark;
    }

    public String mark() {
        return mark;
    }
}
