package org.benchleaf.app;

import java.io.PrintWriter;
import java.util.Optional;
import org.benchleaf.catalog.CatalogException;
import org.benchleaf.catalog.ImportRefused;
import org.benchleaf.catalog.intake.SheetException;
import org.benchleaf.content.MissingContent;
import org.benchleaf.content.Wording;
import org.benchleaf.render.PrintRefused;
import org.benchleaf.shared.Problem;

/// Turns whatever ended a command into one plain message and an exit code: 0 done, 1 done with findings, 2 the
/// person asked for something that cannot be, 3 failed.
public final class ErrorReport {
    public static final int DONE = 0;
    public static final int FINDINGS = 1;
    public static final int USAGE = 2;
    public static final int FAILED = 3;

    private final Wording wording;

    public ErrorReport(Wording wording) {
        this.wording = wording;
    }

    /// Writes the message.
    ///
    /// @return the exit code
    public int report(Throwable failure, PrintWriter err) {
        Optional<Problem> problem = problemOf(failure);
        if (problem.isPresent()) {
            String place = failure instanceof ImportRefused refused
                    ? refused.place().map(where -> where + ": ").orElse("")
                    : "";
            err.println(place + wording.problem(problem.get()));
            err.flush();
            return failure instanceof Refusal ? USAGE : FAILED;
        }
        if (failure instanceof MissingContent missing) {
            err.println(wording.problem(
                    Problem.of("content.missing", missing.key()).with("where", String.valueOf(missing.getMessage()))));
            err.flush();
            return FAILED;
        }
        err.println(wording.problem(Problem.of("unexpected", String.valueOf(failure))));
        failure.printStackTrace(err);
        err.flush();
        return FAILED;
    }

    private static Optional<Problem> problemOf(Throwable failure) {
        return switch (failure) {
            case Refusal refusal -> Optional.of(refusal.problem());
            case CatalogException catalog -> Optional.of(catalog.problem());
            case SheetException sheet -> Optional.of(sheet.problem());
            case PrintRefused print -> Optional.of(print.problem());
            default -> Optional.empty();
        };
    }
}
