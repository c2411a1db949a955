package org.benchleaf.app.cli;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.service.PlantFinder;
import org.benchleaf.app.service.Promises;
import org.benchleaf.app.service.Promises.Part;
import org.benchleaf.catalog.ledger.LedgerEntry;
import org.benchleaf.catalog.ledger.StockEvent;
import org.benchleaf.catalog.model.ItemRecord;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.code.ItemKey;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.stock.StockSize;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "promise",
        mixinStandardHelpOptions = true,
        description = "Sets plants of an item aside for a customer, from as few of its lots as can be: all, or none.")
final class StockPromiseCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Mixin
    private final EntryOptions given = new EntryOptions();

    @Parameters(index = "0", paramLabel = "PLANT", description = "an item key, a plant key or a name")
    @SuppressWarnings("NullAway.Init")
    private String plant;

    @Parameters(index = "1", paramLabel = "NUMBER", description = "plants, 1 or more")
    private int number;

    @Option(names = "--size", paramLabel = "SIZE", description = "in this size, such as '#3'")
    private Optional<StockSize> size = Optional.empty();

    @Option(
            names = "--by",
            paramLabel = "WEEK",
            description = "lots ready by that week too, such as 2027-W15 or 2027-04-12 (default: those ready now)")
    private Optional<String> by = Optional.empty();

    @Option(
            names = "--until",
            paramLabel = "TIME",
            description =
                    "free again after it without another word: 2026-12-01 or 2026-12-01T17:00 (default: until released)")
    private Optional<String> until = Optional.empty();

    StockPromiseCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        if (number < 1) {
            throw new Refusal(Problem.of("count.negative", Integer.toString(number)));
        }
        Optional<YearWeek> asked = by.map(text -> Given.ok(YearWeek.read(text)));
        Optional<Instant> end = until.map(text -> Moments.end(text, clock.getZone()));
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            YearWeek week = asked.orElseGet(() -> YearWeek.of(benchleaf.today()));
            ItemKey item = item(benchleaf, benchleaf.plantFinder().find(plant));
            Promises promises = new Promises(benchleaf.catalog(), benchleaf.ledger());
            List<Part> parts = promises.hold(new Promises.Asked(
                    item, number, week, given.key(), (lot, taken, key) -> entry(lot, taken, key, end)));
            benchleaf.afterChange();
            if (given.json()) {
                console.out().println(new StockJson(clock.getZone()).promise(item, parts, clock.instant()));
                return ErrorReport.DONE;
            }
            StockWords words = new StockWords(benchleaf.wording(), clock.getZone());
            parts.forEach(part -> words.entry(part.entry(), part.lot(), part.writtenBefore())
                    .forEach(console.out()::println));
            console.out().println(words.asOf(benchleaf.now()));
        }
        return ErrorReport.DONE;
    }

    private LedgerEntry entry(String lot, int taken, String key, Optional<Instant> end) {
        return new LedgerEntry(
                lot, new StockEvent.Held(taken, end), given.person(), given.why(), key, given.at(clock.getZone()));
    }

    /// The one item meant: of several sizes nobody guesses.
    private ItemKey item(Benchleaf benchleaf, PlantRecord found) {
        Optional<ItemKey> only = PlantFinder.itemKey(plant);
        PlantStock stock = benchleaf
                .catalog()
                .stock(List.of(found.key()))
                .getOrDefault(found.key(), PlantStock.none(found.key()));
        List<ItemRecord> items = stock.items().stream()
                .filter(item -> only.map(item.key()::equals).orElse(true))
                .filter(item -> size.map(item.size()::equals).orElse(true))
                .toList();
        if (items.size() == 1) {
            return items.getFirst().key();
        }
        String there = (items.isEmpty() ? stock.items() : items)
                .stream()
                        .map(item -> benchleaf.wording().size(item.size(), item.form()) + " [" + item.key() + "]")
                        .collect(Collectors.joining("; "));
        throw new Refusal(new Problem(
                items.isEmpty() ? "promise.item.missing" : "promise.item.several",
                Map.of("read", found.name().toString(), "items", there)));
    }
}
