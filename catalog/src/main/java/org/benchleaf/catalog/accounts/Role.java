package org.benchleaf.catalog.accounts;

import org.benchleaf.shared.Term;

/// What somebody who signs in is. What each may do is a set of rights and not a rung of a ladder, for a
/// printer need not walk the rows and a walker need not print: `docs/staff.md`.
public enum Role implements Term {
    /// Looks, and answers customers.
    VIEWER("viewer"),
    /// Walks the rows: counts, holds, sees, sells.
    WALKER("walker"),
    /// Prints cards, labels and sheets.
    PRINTER("printer"),
    /// Keeps the catalog, and does what walkers and printers do.
    EDITOR("editor"),
    /// May do everything.
    OWNER("owner"),
    /// Buys: is told counts and prices where strangers are not, the prices of a kind of customer.
    CUSTOMER("customer");

    private final String term;

    Role(String term) {
        this.term = term;
    }

    @Override
    public String term() {
        return term;
    }
}
