package org.benchleaf.app.cli;

import java.util.List;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.service.PlantFinder;
import org.benchleaf.catalog.model.PlantRecord;
import picocli.CommandLine.Parameters;

/// The plants a document is printed for.
final class PlantsParameter {
    @Parameters(
            arity = "1..*",
            paramLabel = "PLANT",
            description = "plant keys or names; put a name of several words in quotes")
    @SuppressWarnings("NullAway.Init")
    private List<String> plants;

    List<PlantRecord> in(Benchleaf benchleaf) {
        PlantFinder finder = benchleaf.plantFinder();
        return plants.stream().map(finder::find).toList();
    }
}
