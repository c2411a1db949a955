package org.benchleaf.app.cli;

import java.time.Clock;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.service.DocumentService;
import org.benchleaf.app.service.ListReport;
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

    PrintListCommand(Console console, Clock clock) {
        super(console, clock);
    }

    @Override
    int run(Benchleaf benchleaf) {
        DocumentService documents = benchleaf.documents(document.style(benchleaf));
        ListReport report = benchleaf.listService().report(ListCommand.find(benchleaf, name), benchleaf.today(), false);
        ListPack pack = documents.assembler().pack(report, benchleaf.now());
        int pages = documents.listPack(bare ? pack.withoutSheets() : pack, document.format(benchleaf), document.file());
        tellWritten(document.file(), pages, "page");
        return ErrorReport.DONE;
    }
}
