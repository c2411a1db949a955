package org.benchleaf.shared.stock;

import org.benchleaf.shared.Term;

/// What a seller sees on a crop walk; the usual words of the trade (common practice, no source).
public enum Condition implements Term {
    FLOWER_BUDS_SET("flower buds set"),
    BUD_SET_GOOD("bud set good"),
    IN_BUD("in bud"),
    IN_BLOOM("in bloom"),
    STILL_SOME_FLOWER("still some flower"),
    FALL_COLOR_STARTING("fall color starting"),
    FULL_FALL_COLOR("full fall color"),
    WINTER_HUE("winter hue"),
    WINTER_STEMS_SHOWING("winter stems showing"),
    FOLIAGE_FINISHED("foliage finished"),
    PLUMING_UP("pluming up"),
    BERRIES_ON("berries on"),
    FLUSHING("flushing"),
    TRIMMED("trimmed"),
    CUT_BACK("cut back"),
    FULL("full"),
    HEAVY("heavy"),
    GOOD_CANES("good canes"),
    GOOD_SIDE_GROWTH("good side growth"),
    CONSISTENT_CROP("consistent crop"),
    TIED_UP("tied up"),
    STAGED("staged"),
    NEXT_CROP_IN_SPRING("next crop in spring");

    private final String term;

    Condition(String term) {
        this.term = term;
    }

    @Override
    public String term() {
        return term;
    }
}
