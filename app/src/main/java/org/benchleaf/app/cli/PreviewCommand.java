package org.benchleaf.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.service.DiffReport;
import org.benchleaf.app.service.ImportService;
import org.benchleaf.catalog.ImportDiff;
import org.benchleaf.catalog.ImportDiff.Entry;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.shared.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "preview",
        mixinStandardHelpOptions = true,
        description = "Shows what loading a spreadsheet would change, field by field; changes nothing. Exit code 1:"
                + " something is doubtful or refused.")
final class PreviewCommand implements Callable<Integer> {
    /// A page with more rows is slow to open and nobody reads it.
    private static final int MOST_ON_PAGE = 5000;

    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Mixin
    private final MapOptions maps = new MapOptions();

    @Parameters(paramLabel = "FILE", description = "a CSV file or a workbook (.xlsx)")
    @SuppressWarnings("NullAway.Init")
    private Path file;

    @Option(names = "--html", paramLabel = "FILE", description = "write the report as a page, too")
    private Optional<Path> html = Optional.empty();

    @Option(names = "--json", description = "answer in JSON")
    private boolean json;

    @Option(
            names = "--show",
            paramLabel = "N",
            defaultValue = "100",
            description = "how many changes and findings are written out (default: ${DEFAULT-VALUE})")
    private int most;

    PreviewCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            ImportService imports = benchleaf.imports();
            int told = Math.max(html.isPresent() ? MOST_ON_PAGE : 0, most);
            ImportPlan plan;
            ImportDiff diff;
            try (Progress progress = new Progress(console.err(), benchleaf.wording())) {
                plan = imports.plan(file, maps.map(), maps.sheet(), progress);
                diff = imports.rehearse(plan, told, progress);
            }
            DiffReport report = new DiffReport(benchleaf.wording());
            if (json) {
                ImportJson.preview(plan, diff, benchleaf.wording(), console.out());
            } else {
                write(plan, diff, report, benchleaf);
            }
            if (html.isPresent()) {
                save(html.get(), benchleaf.reports().page(report.page(plan, diff, told), benchleaf.language()));
            }
            return plan.findings().isEmpty() ? ErrorReport.DONE : ErrorReport.FINDINGS;
        }
    }

    static void save(Path file, String page) {
        try {
            Files.writeString(file, page);
        } catch (IOException unwritable) {
            throw new Refusal(Problem.of("print.unwritable", file.toString()));
        }
    }

    private void write(ImportPlan plan, ImportDiff diff, DiffReport report, Benchleaf benchleaf) {
        PrintWriter out = console.out();
        List<Entry> entries = diff.entries().stream().limit(most).toList();
        for (Entry entry : entries) {
            out.println((entry.isNew() ? "+ " : "~ ")
                    + report.title(entry)
                    + (entry.isNew() ? details(report, entry) : ""));
            if (!entry.isNew()) {
                entry.differences()
                        .forEach(difference -> out.println("    " + report.field(difference) + ": "
                                + report.value(difference, difference.before()) + " → "
                                + report.value(difference, difference.after())
                                + (report.note(difference).isEmpty() ? "" : "  (" + report.note(difference) + ")")));
            }
        }
        int all = diff.newPlants() + diff.changedPlants() + diff.newLots() + diff.changedLots();
        if (all > entries.size()) {
            out.println(benchleaf
                    .wording()
                    .text("preview.more", Map.of("count", benchleaf.wording().count((long) all - entries.size()))));
        }
        FindingText findings = new FindingText(benchleaf.wording());
        plan.findings().stream().limit(most).forEach(finding -> out.println(findings.marked(finding)));
        if (plan.findings().size() > most) {
            out.println(benchleaf
                    .wording()
                    .text(
                            "preview.more-findings",
                            Map.of(
                                    "count",
                                    benchleaf
                                            .wording()
                                            .count((long) plan.findings().size() - most))));
        }
        out.println(String.join(
                ", ",
                report.sums(plan, diff).stream()
                        .map(sum -> sum.value() + " " + sum.label())
                        .toList()));
    }

    private static String details(DiffReport report, Entry entry) {
        String details = report.details(entry);
        return details.isEmpty() ? "" : ": " + details;
    }
}
