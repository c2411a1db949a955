package org.benchleaf.search.pairing;

import java.util.Optional;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.shared.plant.SelfFertility;
import org.benchleaf.shared.plant.Sex;

/// What a plant needs to bear fruit, as far as its facts tell.
public enum Pollination {
    /// A female plant: no fruit without a male of its group in bloom at the same time.
    NEEDS_MALE(true),
    /// It does not take its own pollen: no fruit without another one of its group that is no clone of it.
    NEEDS_OTHER(true),
    /// It bears alone, and more with another one.
    BETTER_WITH_OTHER(false),
    /// Sold unsexed, and the sexes are on different plants: several are needed, and only some will fruit.
    SEXES_APART(true),
    /// A male plant: no fruit, and what females need.
    IS_MALE(false),
    /// It fruits without a partner.
    ALONE(false),
    /// The catalog does not know.
    NOT_KNOWN(false);

    private final boolean required;

    Pollination(boolean required) {
        this.required = required;
    }

    /// Whether there is no fruit without a partner.
    public boolean isRequired() {
        return required;
    }

    /// Whether partners are worth naming.
    public boolean hasPartners() {
        return this != ALONE && this != NOT_KNOWN;
    }

    public static Pollination of(Facts facts) {
        Optional<SelfFertility> self = facts.value(Attributes.SELF_FERTILE);
        if (self.filter(SelfFertility.YES::equals).isPresent()) {
            // who names partners of a plant that bears alone means that it bears better with them
            return facts.value(Attributes.POLLINATION_PARTNERS).isPresent() ? BETTER_WITH_OTHER : ALONE;
        }
        Optional<Sex> sex = facts.value(Attributes.SEX);
        if (sex.filter(Sex.MALE::equals).isPresent()) {
            return IS_MALE;
        }
        if (self.filter(SelfFertility.PARTLY::equals).isPresent()) {
            return BETTER_WITH_OTHER;
        }
        if (sex.filter(Sex.FEMALE::equals).isPresent()) {
            return NEEDS_MALE;
        }
        if (sex.filter(Sex.DIOECIOUS::equals).isPresent()) {
            return SEXES_APART;
        }
        return self.isPresent() ? NEEDS_OTHER : NOT_KNOWN;
    }
}
