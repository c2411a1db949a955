package org.benchleaf.catalog;

import org.benchleaf.shared.Problem;

/// A plant list that cannot be saved as it is; nothing was changed.
public final class ListRefused extends CatalogException {
    private static final long serialVersionUID = 1;

    public ListRefused(Problem problem) {
        super(problem.key() + " " + problem.details(), problem);
    }
}
