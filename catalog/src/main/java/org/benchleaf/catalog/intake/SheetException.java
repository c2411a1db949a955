package org.benchleaf.catalog.intake;

import org.benchleaf.shared.Problem;

/// A file that cannot be read as a table at all, so that no row of it can be trusted.
///
/// Keys: `file.missing`, `file.directory`, `file.unreadable`, `file.empty`, `file.xlsx`, `file.workbook.row`,
/// `file.sheet`, `file.xls`, `file.binary`,
/// `file.quotes`; each with the file's name as `read`.
public final class SheetException extends RuntimeException {
    private final transient Problem problem;

    SheetException(Problem problem) {
        super(problem.key() + " " + problem.details());
        this.problem = problem;
    }

    SheetException(Problem problem, Throwable cause) {
        super(problem.key() + " " + problem.details(), cause);
        this.problem = problem;
    }

    public Problem problem() {
        return problem;
    }
}
