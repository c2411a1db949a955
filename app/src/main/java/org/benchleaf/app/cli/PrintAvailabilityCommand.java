package org.benchleaf.app.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.service.DocumentAssembler;
import org.benchleaf.app.service.DocumentService;
import org.benchleaf.app.service.PlantFinder;
import org.benchleaf.render.SheetFormat;
import org.benchleaf.render.page.AvailabilityList;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "availability",
        mixinStandardHelpOptions = true,
        description = "What can be had: every plant with its sizes, counts, ready weeks and prices.")
final class PrintAvailabilityCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Parameters(
            arity = "0..*",
            paramLabel = "PLANT",
            description = "plant keys or names (default: everything that can be had)")
    private List<String> plants = new ArrayList<>();

    @Option(names = "--all", description = "list what is sold out too")
    private boolean all;

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
            defaultValue = "availability.pdf",
            description = "the PDF to write (default: ${DEFAULT-VALUE})")
    @SuppressWarnings("NullAway.Init")
    private Path file;

    PrintAvailabilityCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            DocumentService documents = benchleaf.documents(words.style(benchleaf));
            DocumentAssembler assembler = documents.assembler();
            PlantFinder finder = benchleaf.plantFinder();
            AvailabilityList list = plants.isEmpty()
                    ? assembler.availability(benchleaf.now(), all)
                    : assembler.availability(plants.stream().map(finder::find).toList(), benchleaf.now(), all);
            int pages = documents.availability(list, format, file);
            console.out().println(file + ": " + pages + (pages == 1 ? " page" : " pages"));
        }
        return ErrorReport.DONE;
    }
}
