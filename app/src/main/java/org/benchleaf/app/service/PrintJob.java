package org.benchleaf.app.service;

import java.nio.file.Path;
import java.util.Optional;
import org.benchleaf.shared.Problem;

/// A print that goes on while somebody waits, as it stands.
///
/// @param id in its address
/// @param who ordered it; nobody else sees it
/// @param file where its PDF appears when it is done
/// @param written pages so far
/// @param outcome when it is done
/// @param refused why it cannot be
public record PrintJob(
        String id, String who, Path file, int written, Optional<PressOutcome> outcome, Optional<Problem> refused) {
    /// Whether it goes on.
    public boolean runs() {
        return outcome.isEmpty() && refused.isEmpty();
    }

    /// Whether there is something to download.
    public boolean hasPages() {
        return outcome.map(PressOutcome::pages).orElse(0) > 0;
    }

    PrintJob at(int pages) {
        return new PrintJob(id, who, file, pages, outcome, refused);
    }

    PrintJob done(PressOutcome came) {
        return new PrintJob(id, who, file, came.pages(), Optional.of(came), refused);
    }

    PrintJob refused(Problem problem) {
        return new PrintJob(id, who, file, written, outcome, Optional.of(problem));
    }
}
