package org.benchleaf.app.cli;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.service.ListReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "show",
        mixinStandardHelpOptions = true,
        description = "Shows a list with stock, prices and the twelve months; without a name, the names of all lists.")
final class ListShowCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Parameters(index = "0", arity = "0..1", paramLabel = "LIST", description = "the name of the list")
    private Optional<String> name = Optional.empty();

    @Option(names = "--json", description = "for machines")
    private boolean json;

    ListShowCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            if (name.isEmpty()) {
                List<String> names = benchleaf.lists().names();
                if (json) {
                    console.out().println(ListJson.names(names));
                } else {
                    names.forEach(console.out()::println);
                }
                return ErrorReport.DONE;
            }
            ListReport report =
                    benchleaf.listService().report(ListCommand.find(benchleaf, name.get()), benchleaf.today(), false);
            if (json) {
                console.out().println(new ListJson(benchleaf.wording()).text(report));
            } else {
                new ListText(benchleaf.wording()).write(report, false, console.out());
            }
        }
        return ErrorReport.DONE;
    }
}
