package org.benchleaf.app.cli;

import java.util.Optional;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.render.SheetFormat;
import picocli.CommandLine.Option;

/// The paper of whole-page documents.
final class SheetPaper {
    @Option(names = "--paper", paramLabel = "PAPER", description = "letter or a4 (default: the shop's)")
    private Optional<SheetFormat> format = Optional.empty();

    SheetFormat format(Benchleaf benchleaf) {
        return format.orElseGet(() -> benchleaf.settings().choices().look().paper());
    }
}
