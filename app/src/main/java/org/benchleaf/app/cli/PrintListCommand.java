package org.benchleaf.app.cli;

import java.time.Clock;
import java.util.List;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.service.DocumentService;
import org.benchleaf.app.service.ListReport;
import org.benchleaf.app.service.PressOutcome;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.render.page.ListPack;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "list",
        mixinStandardHelpOptions = true,
        description = "A plant list for its client: a cover, the list, the chart of twelve months, a sheet a plant.")
final class PrintListCommand extends WorkspaceCommand {
    @Parameters(index = "0", paramLabel = "LIST", description = "the name of the list")
    @SuppressWarnings("NullAway.Init")
    private String name;

    @Option(names = "--no-sheets", description = "leave the sheets of its plants out")
    private boolean bare;

    @Mixin
    private final DocumentOptions document = new DocumentOptions("list.pdf");

    @Mixin
    private final PressOptions press = new PressOptions();

    @Mixin
    private final HtmlOption html = new HtmlOption();

    PrintListCommand(Console console, Clock clock) {
        super(console, clock);
    }

    @Override
    int run(Benchleaf benchleaf) {
        DocumentService documents = benchleaf.documents(document.style(benchleaf));
        ListReport report = benchleaf.listService().report(ListCommand.find(benchleaf, name), benchleaf.today(), false);
        ListPack pack = documents.assembler().pack(report, benchleaf.now());
        ListPack shown = bare ? pack.withoutSheets() : pack;
        List<PlantRecord> plants =
                report.lines().stream().flatMap(line -> line.plant().stream()).toList();
        PressOutcome outcome =
                documents.listPack(shown, plants, document.format(benchleaf), press.order(benchleaf), document.file());
        html.write(console(), file -> documents.listPack(shown, file));
        return press.report(outcome, written(document.file(), outcome.pages(), "page"), benchleaf, console());
    }
}
