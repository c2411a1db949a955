package org.benchleaf.app.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Callable;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.service.DocumentService;
import org.benchleaf.app.service.ListReport;
import org.benchleaf.render.SheetFormat;
import org.benchleaf.render.page.ListPack;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "list",
        mixinStandardHelpOptions = true,
        description = "A plant list for its client: a cover, the list, the chart of twelve months, a sheet a plant.")
final class PrintListCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Parameters(index = "0", paramLabel = "LIST", description = "the name of the list")
    @SuppressWarnings("NullAway.Init")
    private String name;

    @Option(names = "--no-sheets", description = "leave the sheets of its plants out")
    private boolean bare;

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
            defaultValue = "list.pdf",
            description = "the PDF to write (default: ${DEFAULT-VALUE})")
    @SuppressWarnings("NullAway.Init")
    private Path file;

    PrintListCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            DocumentService documents = benchleaf.documents(words.style(benchleaf));
            ListReport report = benchleaf
                    .listService()
                    .report(ListCommand.find(benchleaf, name), benchleaf.today(), false);
            ListPack pack = documents.assembler().pack(report, benchleaf.now());
            int pages = documents.listPack(bare ? pack.withoutSheets() : pack, format, file);
            console.out().println(file + ": " + pages + (pages == 1 ? " page" : " pages"));
        }
        return ErrorReport.DONE;
    }
}
