package org.benchleaf.app.cli;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.service.DocumentAssembler;
import org.benchleaf.app.service.DocumentService;
import org.benchleaf.app.service.PlantFinder;
import org.benchleaf.app.service.PressOutcome;
import org.benchleaf.catalog.model.PlantRecord;
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

    @Mixin
    private final PressOptions press = new PressOptions();

    @Mixin
    private final HtmlOption html = new HtmlOption();

    PrintAvailabilityCommand(Console console, Clock clock) {
        super(console, clock);
    }

    @Override
    int run(Benchleaf benchleaf) {
        DocumentService documents = benchleaf.documents(document.style(benchleaf));
        DocumentAssembler assembler = documents.assembler();
        PlantFinder finder = benchleaf.plantFinder();
        List<PlantRecord> chosen = plants.isEmpty()
                ? assembler.forSale()
                : plants.stream().map(finder::find).toList();
        AvailabilityList list = assembler.availability(chosen, benchleaf.now(), all);
        PressOutcome outcome = documents.availability(
                list, chosen, document.format(benchleaf), press.order(benchleaf), document.file());
        html.write(console(), file -> documents.availability(list, file));
        return press.report(outcome, written(document.file(), outcome.pages(), "page"), benchleaf, console());
    }
}
