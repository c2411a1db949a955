package org.benchleaf.catalog;

import org.benchleaf.shared.Problem;

/// The catalog's file cannot be created, opened, read or written: it is missing, read-only, damaged, full, not ours,
/// made by a newer program, or held by another one.
public final class CatalogUnusable extends CatalogException {
    public CatalogUnusable(Problem problem) {
        super(problem.key() + " " + problem.details(), problem);
    }

    public CatalogUnusable(Problem problem, Throwable cause) {
        super(problem.key() + " " + problem.details(), problem, cause);
    }

    /// Whether the connection to a server was lost meanwhile: trying again may do, and what was under way may
    /// have been done all the same.
    public boolean isLost() {
        return problem().key().equals("catalog.lost");
    }
}
