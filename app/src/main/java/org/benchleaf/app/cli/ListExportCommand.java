package org.benchleaf.app.cli;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.service.ListReport;
import org.benchleaf.app.service.ListTable;
import org.benchleaf.catalog.export.CatalogExport;
import org.benchleaf.shared.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "export",
        mixinStandardHelpOptions = true,
        description = "Writes a list for the order desk: one row a line, with prices and remarks.")
final class ListExportCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Parameters(index = "0", paramLabel = "LIST", description = "the name of the list")
    private String name = "";

    @Parameters(
            index = "1",
            paramLabel = "FILE",
            description = "where it is written; its ending says how: .csv or .xlsx")
    @SuppressWarnings("NullAway.Init")
    private Path file;

    @Option(names = "--json", description = "answer in JSON")
    private boolean json;

    ListExportCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        CatalogExport.Format format = format();
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            ListReport report =
                    benchleaf.listService().report(ListCommand.find(benchleaf, name), benchleaf.today(), true);
            ListTable table = new ListTable(benchleaf.wording());
            try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
                CatalogExport.table(format, report.list().name(), ListTable.HEADINGS, table.rows(report), out);
            } catch (IOException unwritable) {
                throw new Refusal(Problem.of("print.unwritable", file.toString()));
            }
            if (json) {
                console.out()
                        .println(Json.text(
                                Json.object().put("rows", report.lines().size()).put("file", file.toString())));
                return ErrorReport.DONE;
            }
            console.out()
                    .println(benchleaf
                            .wording()
                            .text(
                                    "export.done",
                                    Map.of(
                                            "count",
                                                    benchleaf
                                                            .wording()
                                                            .count(report.lines()
                                                                    .size()),
                                            "file", file.toString())));
        }
        return ErrorReport.DONE;
    }

    private CatalogExport.Format format() {
        String ending = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        if (ending.endsWith(".csv")) {
            return CatalogExport.Format.CSV;
        }
        if (ending.endsWith(".xlsx")) {
            return CatalogExport.Format.XLSX;
        }
        throw new Refusal(Problem.of("export.ending", file.toString()));
    }
}
