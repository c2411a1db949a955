package org.benchleaf.app.cli;

import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.Refusal;
import org.benchleaf.catalog.lists.PlantList;
import org.benchleaf.shared.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "remove",
        mixinStandardHelpOptions = true,
        description = "Takes a line off a list; without a line the whole list is deleted.")
final class ListRemoveCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Parameters(index = "0", paramLabel = "LIST", description = "the name of the list")
    private String name = "";

    @Parameters(index = "1", arity = "0..1", paramLabel = "LINE", description = "the number of the line")
    private Optional<Integer> line = Optional.empty();

    @Option(names = "--json", description = "answer in JSON")
    private boolean json;

    ListRemoveCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            PlantList list = ListCommand.find(benchleaf, name);
            if (line.isEmpty()) {
                benchleaf.lists().delete(list.name());
                console.out()
                        .println(
                                json
                                        ? Json.text(Json.object()
                                                .put("list", list.name())
                                                .put("deleted", true))
                                        : benchleaf.wording().text("list.deleted", Map.of("list", list.name())));
                return ErrorReport.DONE;
            }
            int number = line.get();
            if (list.line(number).isEmpty()) {
                throw new Refusal(
                        Problem.of("list.line", Integer.toString(number)).with("list", list.name()));
            }
            PlantList saved = benchleaf.lists().save(list.without(number));
            console.out()
                    .println(
                            json
                                    ? Json.text(ListJson.saved(saved).put("removed", number))
                                    : benchleaf
                                            .wording()
                                            .text(
                                                    "list.removed",
                                                    Map.of("line", Integer.toString(number), "list", list.name())));
        }
        return ErrorReport.DONE;
    }
}
