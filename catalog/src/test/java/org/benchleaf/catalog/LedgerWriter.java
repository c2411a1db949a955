package org.benchleaf.catalog;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.catalog.intake.PlantDraft;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.LedgerKind;
import org.benchleaf.shared.name.BotanicalName;

/// A program of its own that writes until it is killed: entries, each printed once it is acknowledged, and imports.
public final class LedgerWriter {
    static final int PLANTS_OF_AN_IMPORT = 40;

    private LedgerWriter() {}

    /// @param arguments the catalog's file, and a prefix for idempotency keys
    public static void main(String... arguments) {
        String prefix = arguments[1];
        try (Catalog catalog = Catalog.open(Path.of(arguments[0]))) {
            for (int entry = 0; true; entry++) {
                String key = prefix + "-" + entry;
                LedgerResult result = catalog.ledger().record("T0001", LedgerKind.RECEIVED, 1, "child", "", key);
                if (result instanceof LedgerResult.Applied) {
                    System.out.println(key);
                }
                if (entry % 3 == 0) {
                    catalog.apply(Drafts.plan(catalog, ImportPlan.Rank.OWN, plants(key), List.of()));
                }
            }
        }
    }

    private static List<PlantDraft> plants(String key) {
        return IntStream.range(0, PLANTS_OF_AN_IMPORT)
                .mapToObj(plant -> Drafts.plant(
                        BotanicalName.ofSpecies("Itea", "virginica").withCultivar(key + "-" + plant),
                        Drafts.fact(Attributes.HEIGHT, "3-5 ft")))
                .toList();
    }
}
