package org.benchleaf.app.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import picocli.CommandLine.Option;

/// Whether a document is written for the web too.
final class HtmlOption {
    @Option(names = "--html", paramLabel = "FILE", description = "write the same as one HTML file, too")
    private Optional<Path> file = Optional.empty();

    /// @param twin writes it
    void write(Console console, Consumer<Path> twin) {
        file.ifPresent(path -> {
            twin.accept(path);
            console.out().println(path);
        });
    }
}
