package org.benchleaf.app.service;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.app.Refusal;
import org.benchleaf.catalog.Catalog;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.intake.ColumnMap;
import org.benchleaf.catalog.intake.ColumnMaps;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.catalog.intake.ImportPlanner;
import org.benchleaf.catalog.intake.MapFile;
import org.benchleaf.catalog.intake.MapProposal;
import org.benchleaf.catalog.intake.Sheet;
import org.benchleaf.catalog.intake.SheetReader;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Reading;
import org.benchleaf.shared.fact.Source;

/// Loads spreadsheets: chooses the column map, plans, and applies the plan when nothing stands against it.
public final class ImportService {
    private static final List<ColumnMap> OWN = List.of(ColumnMaps.ownPlants(), ColumnMaps.ownStock());

    private final Catalog catalog;

    public ImportService(Catalog catalog) {
        this.catalog = catalog;
    }

    /// Works out what loading a file would do.
    ///
    /// @param map the id of a map that comes with the program, or the path of a saved one; without it the catalog's
    ///     own
    ///     format is used when the headings are its own, else a map is proposed from them
    public ImportPlan plan(Path file, Optional<String> map) {
        try (Sheet sheet = SheetReader.open(file)) {
            ColumnMap columns = map.isPresent() ? named(map.get()) : fitting(sheet);
            return ImportPlanner.plan(sheet, columns, catalog.names());
        }
    }

    /// Works out what loading a file of the program's own would do.
    public ImportPlan plan(String file, byte[] content, ColumnMap columns) {
        try (Sheet sheet = SheetReader.open(file, content)) {
            return ImportPlanner.plan(sheet, columns, catalog.names());
        }
    }

    /// Applies a plan as a whole or not at all.
    public CatalogRevision apply(ImportPlan plan) {
        return catalog.apply(plan);
    }

    private static ColumnMap named(String map) {
        Optional<ColumnMap> known = known(map);
        if (known.isPresent()) {
            return known.get();
        }
        try {
            return switch (MapFile.read(Files.readString(Path.of(map)))) {
                case Reading.Read<ColumnMap>(ColumnMap columns) -> columns;
                case Reading.Refused<ColumnMap>(Problem problem) -> throw new Refusal(problem);
            };
        } catch (IOException noFile) {
            throw new Refusal(
                    Problem.of("map.unknown", map).with("accepted", "own-plants, own-stock, usda-characteristics"));
        }
    }

    private static Optional<ColumnMap> known(String id) {
        return switch (id) {
            case "own-plants" -> Optional.of(ColumnMaps.ownPlants());
            case "own-stock" -> Optional.of(ColumnMaps.ownStock());
            case "usda-characteristics" -> Optional.of(ColumnMaps.usdaCharacteristics());
            default -> Optional.empty();
        };
    }

    /// The own format whose headings the sheet's all are; else a proposal.
    private static ColumnMap fitting(Sheet sheet) {
        Set<String> headings = new HashSet<>(sheet.headings());
        return OWN.stream()
                .filter(map -> map.headings().containsAll(headings))
                .findFirst()
                .orElseGet(() -> MapProposal.of("proposed", sheet.headings(), new Source(sheet.file())));
    }
}
