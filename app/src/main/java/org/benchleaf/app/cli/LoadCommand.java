package org.benchleaf.app.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.service.ImportService;
import org.benchleaf.catalog.intake.ImportPlan;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "load",
        mixinStandardHelpOptions = true,
        description = "Loads spreadsheets of plants or stock, each as a whole or not at all. Exit code 1: loaded, with"
                + " findings, or not loaded because rows could not be.")
final class LoadCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Parameters(
            arity = "1..*",
            paramLabel = "FILE",
            description = "CSV files or workbooks (.xlsx), in the order in which they are loaded")
    private List<Path> files = List.of();

    @Mixin
    private final MapOptions maps = new MapOptions();

    @Option(names = "--json", description = "answer in JSON, one object a file")
    private boolean json;

    @Option(names = "--dry-run", description = "only say what would be done")
    private boolean dryRun;

    @Option(names = "--leave-out", description = "load the other rows when some cannot be loaded")
    private boolean leaveOut;

    @Option(
            names = "--findings",
            paramLabel = "N",
            defaultValue = "50",
            description = "how many findings are written out (default: ${DEFAULT-VALUE})")
    private int most;

    LoadCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        int code = ErrorReport.DONE;
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            for (Path file : files) {
                code = Math.max(code, load(benchleaf, file));
            }
        }
        return code;
    }

    private int load(Benchleaf benchleaf, Path file) {
        ImportService imports = benchleaf.imports();
        ImportPlan plan;
        try (Progress progress = new Progress(console.err(), benchleaf.wording())) {
            plan = imports.plan(file, maps.map(), maps.sheet(), progress);
        }
        boolean blocked = plan.rowsLeftOut() > 0 && !leaveOut;
        if (json) {
            Optional<Long> revision =
                    dryRun || blocked ? Optional.empty() : Optional.of(apply(imports, plan, benchleaf));
            ImportJson.loaded(plan, revision, benchleaf.wording(), console.out());
            return plan.findings().isEmpty() && !blocked ? ErrorReport.DONE : ErrorReport.FINDINGS;
        }
        new FindingText(benchleaf.wording()).write(plan, most, console.out());
        if (dryRun) {
            console.out().println(benchleaf.wording().text("load.dry-run"));
        } else if (blocked) {
            console.out().println(benchleaf.wording().text("load.blocked"));
        } else {
            long revision = apply(imports, plan, benchleaf);
            console.out()
                    .println(benchleaf.wording().text("load.applied", Map.of("revision", Long.toString(revision))));
        }
        return plan.findings().isEmpty() && !blocked ? ErrorReport.DONE : ErrorReport.FINDINGS;
    }

    private long apply(ImportService imports, ImportPlan plan, Benchleaf benchleaf) {
        try (Progress progress = new Progress(console.err(), benchleaf.wording())) {
            return imports.apply(plan, progress).number();
        }
    }
}
