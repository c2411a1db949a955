package org.benchleaf.catalog.rules;

import java.util.Locale;

/// The columns of a list of sale rules, in their usual order; `docs/sale-rules.md` tells what each holds.
public enum RuleColumn {
    ID(true),
    KIND(false),
    JURISDICTION(true),
    TAXON(true),
    ALSO_NAMED(false),
    COVERS(false),
    STANDING(true),
    LISTED(false),
    RECEIPT_FROM(false),
    SALE_FROM(false),
    UNTIL(false),
    EXEMPT(false),
    NOTICE(false),
    SOURCE(true),
    COMPILED_ON(true);

    private final boolean required;

    RuleColumn(boolean required) {
        this.required = required;
    }

    /// Whether each row must fill it.
    public boolean isRequired() {
        return required;
    }

    /// `also_named`
    public String heading() {
        return name().toLowerCase(Locale.ROOT);
    }
}
