package org.benchleaf.app.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.Callable;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.service.DocumentService;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.render.SheetFormat;
import org.benchleaf.render.page.Comparison;
import org.benchleaf.shared.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
        name = "comparison",
        mixinStandardHelpOptions = true,
        description = "Two to four plants side by side, what differs first.")
final class PrintComparisonCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Mixin
    private final PlantsParameter plants = new PlantsParameter();

    @Mixin
    private final PaperOptions words = new PaperOptions();

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
            defaultValue = "comparison.pdf",
            description = "the PDF to write (default: ${DEFAULT-VALUE})")
    @SuppressWarnings("NullAway.Init")
    private Path file;

    PrintComparisonCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            DocumentService documents = benchleaf.documents(words.style(benchleaf));
            List<PlantRecord> chosen = plants.in(benchleaf);
            if (chosen.size() < 2 || chosen.size() > Comparison.MOST) {
                throw new Refusal(Problem.of("print.compared", Integer.toString(chosen.size())));
            }
            int pages = documents.comparison(documents.assembler().comparison(chosen, benchleaf.now()), format, file);
            console.out().println(file + ": " + pages + (pages == 1 ? " page" : " pages"));
        }
        return ErrorReport.DONE;
    }
}
