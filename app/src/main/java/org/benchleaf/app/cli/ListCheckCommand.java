package org.benchleaf.app.cli;

import java.time.Clock;
import java.util.concurrent.Callable;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.service.ListReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = "Checks a list as a whole: law, site, pollination, shortages with what fills them, safety, the"
                + " twelve months. Exit code 1: something stands against it.")
final class ListCheckCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Parameters(index = "0", paramLabel = "LIST", description = "the name of the list")
    private String name = "";

    @Option(names = "--json", description = "for machines")
    private boolean json;

    ListCheckCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            ListReport report =
                    benchleaf.listService().report(ListCommand.find(benchleaf, name), benchleaf.today(), true);
            if (json) {
                console.out().println(new ListJson(benchleaf.wording()).text(report));
            } else {
                new ListText(benchleaf.wording()).write(report, true, console.out());
            }
            return report.isSound() ? ErrorReport.DONE : ErrorReport.FINDINGS;
        }
    }
}
