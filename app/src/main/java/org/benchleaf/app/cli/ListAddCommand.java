package org.benchleaf.app.cli;

import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.service.PlantAmount;
import org.benchleaf.catalog.lists.ListLine;
import org.benchleaf.catalog.lists.PlantList;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.content.Wording;
import org.benchleaf.shared.stock.StockSize;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "add",
        mixinStandardHelpOptions = true,
        description = "Puts a plant on a list, so many, or as many as a bed or a row takes.")
final class ListAddCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Mixin
    private final AmountOptions amount = new AmountOptions();

    @Parameters(index = "0", paramLabel = "LIST", description = "the name of the list")
    private String name = "";

    @Parameters(
            index = "1",
            paramLabel = "PLANT",
            description = "a plant's key or name; put a name of several words in quotes")
    private String plant = "";

    @Option(names = "--size", paramLabel = "SIZE", description = "in this size, for example '#3'")
    private Optional<StockSize> size = Optional.empty();

    @Option(names = "--note", paramLabel = "TEXT", defaultValue = "", description = "a remark of yours")
    private String note = "";

    @Option(names = "--json", description = "answer in JSON")
    private boolean json;

    ListAddCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            Wording words = benchleaf.wording();
            PlantAmount many = amount.amount(words);
            PlantRecord record = benchleaf.plantFinder().find(plant);
            PlantList list = ListCommand.find(benchleaf, name)
                    .with(number ->
                            new ListLine(number, record.key(), size, many.plants(), many.worked(), note.strip()));
            PlantList saved = benchleaf.lists().save(list);
            int line = saved.lines().getLast().number();
            if (json) {
                console.out()
                        .println(Json.text(ListJson.saved(saved)
                                .put("line", line)
                                .put("key", record.key().text())
                                .put("name", record.name().toString())
                                .put("quantity", many.plants())
                                .put("worked", many.worked())));
                return ErrorReport.DONE;
            }
            console.out()
                    .println(words.text(
                            "list.added",
                            Map.of(
                                    "line", Integer.toString(line),
                                    "name", record.name().toString(),
                                    "count", words.count(many.plants()),
                                    "worked", many.worked().isEmpty() ? "" : " (" + many.worked() + ")",
                                    "list", saved.name())));
        }
        return ErrorReport.DONE;
    }
}
