package org.benchleaf.app.cli;

import java.nio.file.Path;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.render.PrintStyle;
import org.benchleaf.render.SheetFormat;
import picocli.CommandLine.Mixin;

/// What every document on whole pages can be asked: its words, its paper and its file.
final class DocumentOptions {
    @Mixin
    private final PaperOptions words = new PaperOptions();

    @Mixin
    private final SheetPaper paper = new SheetPaper();

    @Mixin
    private final OutOption out;

    /// @param usual file name when none is given
    DocumentOptions(String usual) {
        this.out = new OutOption(usual);
    }

    PrintStyle style(Benchleaf benchleaf) {
        return words.style(benchleaf);
    }

    SheetFormat format(Benchleaf benchleaf) {
        return paper.format(benchleaf);
    }

    Path file() {
        return out.file();
    }
}
