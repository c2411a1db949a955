package org.benchleaf.app.cli;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.service.PlantFinder;
import org.benchleaf.catalog.model.ItemRecord;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.content.Wording;
import org.benchleaf.shared.code.ItemKey;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.stock.StockSize;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "availability",
        mixinStandardHelpOptions = true,
        description =
                "What can be promised of a plant or item: free now, week by week ahead, and how it looked when last"
                        + " seen.")
final class StockAvailabilityCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Parameters(arity = "1..*", paramLabel = "PLANT", description = "a plant key, an item key or a name")
    private List<String> words = List.of();

    @Option(names = "--size", paramLabel = "SIZE", description = "this size only, such as '#3'")
    private Optional<StockSize> size = Optional.empty();

    @Option(names = "--by", paramLabel = "WEEK", description = "how many by that week, such as 2027-W15 or 2027-04-12")
    private Optional<String> by = Optional.empty();

    @Option(names = "--json", description = "answer in JSON")
    private boolean json;

    StockAvailabilityCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        Optional<YearWeek> week = by.map(text -> Given.ok(YearWeek.read(text)));
        String text = String.join(" ", words);
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            PlantRecord plant = benchleaf.plantFinder().find(text);
            PlantStock stock = benchleaf
                    .catalog()
                    .stock(List.of(plant.key()))
                    .getOrDefault(plant.key(), PlantStock.none(plant.key()));
            Optional<ItemKey> only = PlantFinder.itemKey(text);
            List<ItemRecord> items = stock.items().stream()
                    .filter(item -> only.map(item.key()::equals).orElse(true))
                    .filter(item -> size.map(item.size()::equals).orElse(true))
                    .toList();
            YearWeek now = YearWeek.of(benchleaf.today());
            if (json) {
                console.out()
                        .println(new StockJson(clock.getZone())
                                .availability(plant, stock, items, week, now, clock.instant()));
            } else {
                write(benchleaf, plant, stock, items, week);
            }
        }
        return ErrorReport.DONE;
    }

    private void write(
            Benchleaf benchleaf, PlantRecord plant, PlantStock stock, List<ItemRecord> items, Optional<YearWeek> week) {
        Wording wording = benchleaf.wording();
        StockWords stockWords = new StockWords(wording, clock.getZone());
        console.out().println(plant.name() + "  [" + plant.key() + "]");
        if (items.isEmpty()) {
            console.out().println("  " + wording.text("outlook.not-grown"));
        }
        for (ItemRecord item : items) {
            String price = item.price()
                    .map(money -> wording.text("list.comma") + wording.money(money))
                    .orElse("");
            console.out().println("  " + wording.size(item.size(), item.form()) + price + "  [" + item.key() + "]");
            stockWords
                    .outlook(
                            stock.outlook(item.key(), YearWeek.of(benchleaf.today())),
                            week.map(asked -> stock.freeBy(item.key(), asked)),
                            week,
                            benchleaf.today())
                    .forEach(line -> console.out().println("    " + line));
        }
        console.out().println(stockWords.asOf(benchleaf.now()));
    }
}
