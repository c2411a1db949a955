package org.benchleaf.app.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.service.DeliveryReader;
import org.benchleaf.app.service.PlantFinder;
import org.benchleaf.app.service.PrintOrder;
import org.benchleaf.app.service.Wanted;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.stock.StockSize;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/// What is printed: plants by name, or the rows of a delivery's spreadsheet; and in which order.
final class PrintChoice {
    @Parameters(
            arity = "0..*",
            paramLabel = "PLANT",
            description = "plant keys or names; put a name of several words in quotes")
    private List<String> plants = new ArrayList<>();

    @Option(
            names = "--from",
            paramLabel = "FILE",
            description = "the spreadsheet of a delivery: columns plant (or name, or key), size, count")
    private Optional<Path> delivery = Optional.empty();

    @Option(names = "--size", paramLabel = "SIZE", description = "the item's size, for example '#3'")
    private Optional<StockSize> size = Optional.empty();

    @Option(
            names = "--order",
            paramLabel = "ORDER",
            defaultValue = "given",
            description = "given, name, or bench: as one walks along the benches (default: ${DEFAULT-VALUE})")
    @SuppressWarnings("NullAway.Init")
    private PrintOrder order;

    PrintOrder order() {
        return order;
    }

    /// @param copies of each plant that is named
    List<Wanted> in(Benchleaf benchleaf, Optional<Integer> copies) {
        PlantFinder finder = benchleaf.plantFinder();
        List<Wanted> wanted = new ArrayList<>();
        for (String plant : plants) {
            wanted.add(new Wanted(finder.find(plant), size, copies));
        }
        delivery.ifPresent(file -> wanted.addAll(DeliveryReader.read(file, finder)));
        if (wanted.isEmpty()) {
            throw new Refusal(Problem.of("print.nothing", ""));
        }
        return wanted;
    }
}
