package org.benchleaf.bench.eval;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Optional;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.Settings;
import org.benchleaf.app.Workspace;
import org.benchleaf.app.service.ImportService;
import org.benchleaf.app.service.LoadProgress;
import org.benchleaf.app.service.MapShelf;
import org.benchleaf.app.service.SaleRuleService;
import org.benchleaf.catalog.Catalog;
import org.benchleaf.catalog.intake.ShopHabits;
import org.benchleaf.catalog.intake.ColumnMaps;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.demo.DemoCatalog;
import org.benchleaf.shared.measure.LengthStyle;

/// Loads the demo nursery and, when given, a table of landscape taxa, asks what published lists answer, and
/// writes how far the answers agree.
public final class Evaluation {
    private static final Clock NOVEMBER = Clock.fixed(Instant.parse("2026-11-25T15:00:00Z"), ZoneOffset.UTC);

    private Evaluation() {}

    /// @param taxa a table of landscape taxa, when there is one
    /// @param second a table of USDA PLANTS characteristics, when there is one
    public static void run(Optional<Path> taxa, Optional<Path> second, PrintStream out) throws IOException {
        SecondSource source = second.isPresent() ? SecondSource.read(second.get()) : SecondSource.NONE;
        try (Benchleaf benchleaf = open(taxa)) {
            new Report(benchleaf, source, out).write(taxa.isPresent());
        }
    }

    /// A shop of its own with the demo nursery, its sale rules and, when given, landscape taxa.
    static Benchleaf open(Optional<Path> taxa) throws IOException {
        Path folder = Files.createTempDirectory("benchleaf-evaluation").resolve("shop");
        Workspace workspace = Workspace.create(
                folder,
                new Settings(
                        "Evaluation", "", URI.create("http://localhost:7070"), Locale.ENGLISH, LengthStyle.IMPERIAL));
        try (Catalog catalog = Catalog.create(workspace.database())) {
            load(new ImportService(catalog, new MapShelf(workspace.mapsFolder()), ShopHabits.NONE), taxa);
            for (String file : DemoCatalog.ruleFiles()) {
                try (InputStream content = DemoCatalog.open(file)) {
                    catalog.load(SaleRuleService.read(file.substring(file.indexOf('/') + 1), content.readAllBytes()));
                }
            }
        }
        return Benchleaf.open(folder, NOVEMBER);
    }

    private static void load(ImportService imports, Optional<Path> taxa) throws IOException {
        for (String file : DemoCatalog.plantFiles()) {
            try (InputStream content = DemoCatalog.open(file)) {
                imports.apply(imports.plan(file, content.readAllBytes(), ColumnMaps.ownPlants()));
            }
        }
        for (String file : DemoCatalog.stockFiles()) {
            try (InputStream content = DemoCatalog.open(file)) {
                imports.apply(imports.plan(file, content.readAllBytes(), ColumnMaps.ownStock()));
            }
        }
        if (taxa.isPresent()) {
            ImportPlan plan =
                    imports.plan(taxa.get(), Optional.of("landscape-taxa"), Optional.empty(), LoadProgress.UNHEARD);
            imports.apply(plan);
        }
    }
}
