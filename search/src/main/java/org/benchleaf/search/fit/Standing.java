package org.benchleaf.search.fit;

/// Whether a plant can be had at all, in any size; the better first.
public enum Standing {
    FREE_NOW,
    COMING_ON,
    NONE
}
