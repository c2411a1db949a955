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
import org.benchleaf.catalog.export.CatalogExport;
import org.benchleaf.shared.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "export",
        mixinStandardHelpOptions = true,
        description = "Writes plants or stock as a spreadsheet in the catalog's own format: loaded again, it changes"
                + " nothing.")
final class ExportCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    /// What is written.
    enum Subject {
        PLANTS,
        STOCK
    }

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Parameters(index = "0", paramLabel = "WHAT", description = "plants or stock")
    @SuppressWarnings("NullAway.Init")
    private Subject subject;

    @Parameters(
            index = "1",
            paramLabel = "FILE",
            description = "where it is written; its ending says how: .csv or .xlsx")
    @SuppressWarnings("NullAway.Init")
    private Path file;

    @Option(names = "--darwin-core", description = "add columns of Darwin Core terms for the names")
    private boolean darwinCore;

    @Option(
            names = "--every-source",
            description = "plants: write facts that are not shown and synonyms of other sources too, a row a source")
    private boolean everySource;

    @Option(names = "--json", description = "answer in JSON")
    private boolean json;

    ExportCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        CatalogExport.Format format = format();
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock);
                OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
            int count = switch (subject) {
                case PLANTS -> CatalogExport.plants(benchleaf.catalog(), format, darwinCore, everySource, out);
                case STOCK -> CatalogExport.stock(benchleaf.catalog(), format, out);
            };
            console.out()
                    .println(
                            json
                                    ? "{\"rows\": " + count + "}"
                                    : benchleaf
                                            .wording()
                                            .text(
                                                    "export.done",
                                                    Map.of(
                                                            "count",
                                                            benchleaf.wording().count(count),
                                                            "file",
                                                            file.toString())));
        } catch (IOException unwritable) {
            throw new Refusal(Problem.of("print.unwritable", file.toString()));
        }
        return ErrorReport.DONE;
    }

    private CatalogExport.Format format() {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        if (name.endsWith(".csv")) {
            return CatalogExport.Format.CSV;
        }
        if (name.endsWith(".xlsx")) {
            return CatalogExport.Format.XLSX;
        }
        throw new Refusal(Problem.of("export.ending", file.toString()));
    }
}
