package org.benchleaf.app.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Callable;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.render.SheetFormat;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(name = "sheet", mixinStandardHelpOptions = true, description = "One product sheet a plant.")
final class PrintSheetCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Mixin
    private final PlantsParameter plants = new PlantsParameter();

    @Mixin
    private final PaperOptions paper = new PaperOptions();

    @Option(
            names = "--paper",
            paramLabel = "PAPER",
            defaultValue = "letter",
            description = "letter or a4 (default: ${DEFAULT-VALUE})")
    @SuppressWarnings("NullAway.Init")
    private SheetFormat format;

    @Option(
            names = {"-o", "--out"},
            paramLabel = "FILE",
            defaultValue = "sheet.pdf",
            description = "the PDF to write (default: ${DEFAULT-VALUE})")
    @SuppressWarnings("NullAway.Init")
    private Path file;

    @Option(names = "--sources", description = "print what other sources state beside the facts shown")
    private boolean sources;

    PrintSheetCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            int pages =
                    benchleaf.printing(paper.style(benchleaf)).plantSheets(plants.in(benchleaf), format, sources, file);
            console.out().println(file + ": " + pages + (pages == 1 ? " page" : " pages"));
        }
        return ErrorReport.DONE;
    }
}
