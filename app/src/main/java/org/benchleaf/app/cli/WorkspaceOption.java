package org.benchleaf.app.cli;

import java.nio.file.Path;
import picocli.CommandLine.Option;

/// Which workspace a command works on.
final class WorkspaceOption {
    @Option(
            names = {"-w", "--workspace"},
            paramLabel = "FOLDER",
            defaultValue = "${BENCHLEAF_WORKSPACE:-demo}",
            description = "the shop's folder (default: $BENCHLEAF_WORKSPACE, else demo)")
    @SuppressWarnings("NullAway.Init") // set by picocli before anything runs
    private Path folder;

    Path folder() {
        return folder;
    }
}
