package org.benchleaf.catalog;

import org.benchleaf.shared.Problem;

/// A change of staff that cannot be made; nothing was changed.
public final class AccountRefused extends CatalogException {
    private static final long serialVersionUID = 1;

    public AccountRefused(Problem problem) {
        super(problem.key() + " " + problem.details(), problem);
    }
}
