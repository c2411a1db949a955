package org.benchleaf.app;

import org.benchleaf.shared.Problem;

/// A request that cannot be carried out as it stands: the person's to mend, not a fault of the program.
///
/// The problem's sentence is `problem.` + key in the content pack.
public final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1;
    private final transient Problem problem;

    public Refusal(Problem problem) {
        super(problem.key() + " " + problem.details());
        this.problem = problem;
    }

    /// What is wrong, with its details.
    public Problem problem() {
        return problem;
    }
}
