package org.benchleaf.app.cli;

import java.nio.file.Path;
import picocli.CommandLine.Option;

/// Where a document is written.
final class OutOption {
    @Option(
            names = {"-o", "--out"},
            paramLabel = "FILE",
            description = "the PDF to write (default: ${DEFAULT-VALUE})")
    private Path file;

    /// @param usual file name when none is given
    OutOption(String usual) {
        this.file = Path.of(usual);
    }

    Path file() {
        return file;
    }
}
