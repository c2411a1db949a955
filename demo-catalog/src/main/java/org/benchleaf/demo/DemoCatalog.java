package org.benchleaf.demo;

import java.io.InputStream;
import java.util.List;

/// The spreadsheets of Wrenfold Growers, an invented nursery with real plants.
public final class DemoCatalog {
    private static final List<String> GROUPS =
            List.of("trees", "shrubs", "conifers", "vines", "perennials", "groundcovers", "grasses", "ferns");

    private DemoCatalog() {}

    /// The files of plants, in the order in which they are imported: `plants/trees.csv` ...
    public static List<String> plantFiles() {
        return GROUPS.stream().map(group -> "plants/" + group + ".csv").toList();
    }

    /// The files of lots, to be imported after the plants: `stock/trees.csv` ...
    public static List<String> stockFiles() {
        return GROUPS.stream().map(group -> "stock/" + group + ".csv").toList();
    }

    /// The lists of sale rules and quarantines, some rows from memory: `rules/us-sale-rules.csv` ...
    public static List<String> ruleFiles() {
        return List.of("rules/us-sale-rules.csv", "rules/us-quarantines.csv");
    }

    /// Plants that the nursery does not grow and customers ask for, most of them because they may not be sold
    /// any more:
    /// `reference/plants.csv`. They stand in no catalog; substitutes are found for them.
    public static List<String> referenceFiles() {
        return List.of("reference/plants.csv");
    }

    /// Opens one of the files; UTF-8.
    ///
    /// @throws IllegalArgumentException when it is none of them
    public static InputStream open(String file) {
        InputStream content = DemoCatalog.class.getResourceAsStream(file);
        if (content == null) {
            throw new IllegalArgumentException("no file of the demo catalog: " + file);
        }
        return content;
    }
}
