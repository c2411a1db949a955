package org.benchleaf.app.cli;

import java.time.Clock;
import java.util.Map;
import java.util.concurrent.Callable;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.Refusal;
import org.benchleaf.catalog.lists.ListSite;
import org.benchleaf.catalog.lists.PlantList;
import org.benchleaf.shared.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "new",
        mixinStandardHelpOptions = true,
        description = "Begins a list; what is said of the site is checked for every plant.")
final class ListNewCommand implements Callable<Integer> {
    private static final int LONGEST = 100;

    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Mixin
    private final ListSiteOptions site = new ListSiteOptions();

    @Parameters(index = "0", paramLabel = "LIST", description = "the name of the list")
    private String name = "";

    @Option(names = "--json", description = "answer in JSON")
    private boolean json;

    ListNewCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        if (name.isBlank() || name.length() > LONGEST) {
            throw new Refusal(Problem.of("list.name", name));
        }
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            PlantList list = benchleaf.lists().save(PlantList.empty(name, site.site(ListSite.UNKNOWN)));
            console.out()
                    .println(
                            json
                                    ? Json.text(ListJson.saved(list))
                                    : benchleaf.wording().text("list.begun", Map.of("name", list.name())));
        }
        return ErrorReport.DONE;
    }
}
