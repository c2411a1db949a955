package org.benchleaf.app.cli;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.service.DocumentAssembler;
import org.benchleaf.app.service.DocumentService;
import org.benchleaf.app.service.PlantFinder;
import org.benchleaf.render.page.AvailabilityList;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "availability",
        mixinStandardHelpOptions = true,
        description = "What can be had: every plant with its sizes, counts, ready weeks and prices.")
final class PrintAvailabilityCommand extends WorkspaceCommand {
    @Parameters(
            arity = "0..*",
            paramLabel = "PLANT",
            description = "plant keys or names (default: everything that can be had)")
    private List<String> plants = new ArrayList<>();

    @Option(names = "--all", description = "list what is sold out too")
    private boolean all;

    @Mixin
    private final DocumentOptions document = new DocumentOptions("availability.pdf");

    PrintAvailabilityCommand(Console console, Clock clock) {
        super(console, clock);
    }

    @Override
    int run(Benchleaf benchleaf) {
        DocumentService documents = benchleaf.documents(document.style(benchleaf));
        DocumentAssembler assembler = documents.assembler();
        PlantFinder finder = benchleaf.plantFinder();
        AvailabilityList list = plants.isEmpty()
                ? assembler.availability(benchleaf.now(), all)
                : assembler.availability(plants.stream().map(finder::find).toList(), benchleaf.now(), all);
        int pages = documents.availability(list, document.format(benchleaf), document.file());
        tellWritten(document.file(), pages, "page");
        return ErrorReport.DONE;
    }
}
