package org.benchleaf.catalog;

import org.benchleaf.shared.Problem;

/// Something the catalog could not do, with the reason as a value; nothing was changed.
public abstract sealed class CatalogException extends RuntimeException
        permits CatalogUnusable, ImportRefused, ListRefused, AccountRefused {
    private final transient Problem problem;

    CatalogException(String message, Problem problem) {
        super(message);
        this.problem = problem;
    }

    CatalogException(String message, Problem problem, Throwable cause) {
        super(message, cause);
        this.problem = problem;
    }

    /// What is wrong, as a key and details for a sentence in the reader's language.
    public Problem problem() {
        return problem;
    }
}
