package org.benchleaf.shared.site;

import org.benchleaf.shared.Term;

/// Light at a site, by hours of direct sun a day in the growing season (common practice of extension services, from
/// memory): full sun 6 h or more, part sun 4 to 6 h, part shade 2 to 4 h, full shade under 2 h.
public enum Exposure implements Term {
    FULL_SUN("full sun"),
    PART_SUN("part sun"),
    PART_SHADE("part shade"),
    FULL_SHADE("full shade");

    private final String term;

    Exposure(String term) {
        this.term = term;
    }

    @Override
    public String term() {
        return term;
    }

    /// How many steps of light lie between two exposures: 0 to 3.
    public int stepsTo(Exposure other) {
        return Math.abs(ordinal() - other.ordinal());
    }
}
