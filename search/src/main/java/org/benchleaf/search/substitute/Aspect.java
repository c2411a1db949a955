package org.benchleaf.search.substitute;

import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.catalog.model.Attributes;

/// What two plants are compared by, in the order in which differences are told.
public enum Aspect {
    KIND(Attributes.LIFE_FORM),
    FOLIAGE(Attributes.FOLIAGE),
    HEIGHT(Attributes.HEIGHT),
    SPREAD(Attributes.SPREAD),
    HABIT(Attributes.HABIT),
    LIGHT(Attributes.EXPOSURE),
    SOIL(Attributes.MOISTURE),
    DROUGHT(Attributes.DROUGHT_TOLERANCE),
    FLOWER_COLOR(Attributes.FLOWER_COLOR),
    BLOOM(Attributes.BLOOM),
    FALL_COLOR(Attributes.FALL_COLOR),
    FRUIT_COLOR(Attributes.FRUIT_COLOR),
    LEAF_COLOR(Attributes.FOLIAGE_COLOR),
    STEM_COLOR(Attributes.STEM_COLOR),
    HARDINESS(Attributes.HARDINESS),
    DEER(Attributes.DEER),
    GROWTH(Attributes.GROWTH_RATE),
    FRAGRANCE(Attributes.FRAGRANCE),
    WILDLIFE(Attributes.WILDLIFE),
    NATIVE(Attributes.NATIVE_STATES);

    private final Attribute<?> attribute;

    Aspect(Attribute<?> attribute) {
        this.attribute = attribute;
    }

    /// The fact that is compared.
    public Attribute<?> attribute() {
        return attribute;
    }
}
