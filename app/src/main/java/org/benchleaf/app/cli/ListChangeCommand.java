package org.benchleaf.app.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Clock;
import java.util.Map;
import java.util.concurrent.Callable;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.service.ListWords;
import org.benchleaf.catalog.lists.PlantList;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "site",
        mixinStandardHelpOptions = true,
        description = "Says or changes where and when a list is planted; what is not given stays.")
final class ListChangeCommand implements Callable<Integer> {
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

    ListChangeCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            PlantList list = ListCommand.find(benchleaf, name);
            PlantList saved = benchleaf.lists().save(list.at(site.site(list.site())));
            if (json) {
                ObjectNode answer = ListJson.saved(saved);
                ListJson.site(answer.putObject("site"), saved.site());
                console.out().println(Json.text(answer));
                return ErrorReport.DONE;
            }
            console.out()
                    .println(benchleaf
                            .wording()
                            .text(
                                    "list.site",
                                    Map.of(
                                            "list",
                                            saved.name(),
                                            "site",
                                            new ListWords(benchleaf.wording()).site(saved.site()))));
        }
        return ErrorReport.DONE;
    }
}
