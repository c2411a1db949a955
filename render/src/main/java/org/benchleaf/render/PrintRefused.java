package org.benchleaf.render;

import org.benchleaf.shared.Problem;

/// Something cannot be printed as it stands: a text that does not fit, a character no font has, a code too small.
///
/// The problem names the plant or label and the field; its sentence is `problem.` + key in the content pack.
public final class PrintRefused extends RuntimeException {
    private static final long serialVersionUID = 1;
    private final transient Problem problem;

    public PrintRefused(Problem problem) {
        super(problem.key() + " " + problem.details());
        this.problem = problem;
    }

    /// What is wrong, with its details.
    public Problem problem() {
        return problem;
    }
}
