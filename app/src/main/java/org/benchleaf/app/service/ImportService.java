package org.benchleaf.app.service;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.catalog.Catalog;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.ImportDiff;
import org.benchleaf.catalog.UndoneImport;
import org.benchleaf.catalog.intake.ColumnMap;
import org.benchleaf.catalog.intake.ColumnMaps;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.catalog.intake.ImportPlanner;
import org.benchleaf.catalog.intake.MapProposal;
import org.benchleaf.catalog.intake.Sheet;
import org.benchleaf.catalog.intake.SheetReader;
import org.benchleaf.catalog.intake.ShopHabits;
import org.benchleaf.shared.fact.Source;

/// Loads spreadsheets: chooses the column map, plans, shows what would change, applies, and takes back.
public final class ImportService {
    private static final List<ColumnMap> OWN = List.of(ColumnMaps.ownPlants(), ColumnMaps.ownStock());
    /// Rows whose contents say what the columns are.
    private static final int SAMPLE = 300;

    private final Catalog catalog;
    private final MapShelf maps;
    private final ShopHabits habits;

    /// @param habits what the shop calls container classes, and the day
    public ImportService(Catalog catalog, MapShelf maps, ShopHabits habits) {
        this.catalog = catalog;
        this.maps = maps;
        this.habits = habits;
    }

    /// Works out what loading a file would do.
    ///
    /// @param map the name of a saved map or of one that comes with the program, or the path of a file;
    ///     without it the catalog's own format is used when the headings are its own, else a map is
    ///     proposed
    /// @param sheet of a workbook; without it the first
    /// @param progress hears how far it is
    public ImportPlan plan(Path file, Optional<String> map, Optional<String> sheet, LoadProgress progress) {
        ColumnMap columns = map.isPresent() ? maps.named(map.get()) : fitting(file, sheet);
        try (Sheet rows = SheetReader.open(file, sheet)) {
            return ImportPlanner.plan(
                    rows, columns, catalog.names(), habits, count -> progress.read(count, rows.share()));
        }
    }

    /// Works out what loading a file would do, its columns told.
    public ImportPlan plan(Path file, ColumnMap columns) {
        try (Sheet rows = SheetReader.open(file, Optional.empty())) {
            return ImportPlanner.plan(rows, columns, catalog.names(), habits, count -> {});
        }
    }

    /// The headings and the first rows of a file.
    public List<List<String>> sample(Path file, int rows) {
        try (Sheet sheet = SheetReader.open(file, Optional.empty())) {
            List<List<String>> sample = new ArrayList<>(List.of(sheet.headings()));
            sheet.rows().limit(rows).map(row -> row.cells()).forEach(sample::add);
            return sample;
        }
    }

    /// Works out what loading a file of the program's own would do.
    public ImportPlan plan(String file, byte[] content, ColumnMap columns) {
        try (Sheet sheet = SheetReader.open(file, content)) {
            return ImportPlanner.plan(sheet, columns, catalog.names());
        }
    }

    /// What the columns of a file seem to mean, by their headings and contents.
    public ColumnMap propose(Path file, Optional<String> sheet, String name) {
        try (Sheet rows = SheetReader.open(file, sheet)) {
            List<List<String>> sample =
                    rows.rows().limit(SAMPLE).map(row -> row.cells()).toList();
            return MapProposal.of(name, rows.headings(), sample, new Source(rows.file()));
        }
    }

    /// The headings of a file.
    public List<String> headings(Path file, Optional<String> sheet) {
        try (Sheet rows = SheetReader.open(file, sheet)) {
            return rows.headings();
        }
    }

    /// What applying a plan would change; nothing is changed.
    public ImportDiff rehearse(ImportPlan plan, int most, LoadProgress progress) {
        return catalog.rehearse(plan, most, written -> progress.written(written, size(plan)));
    }

    private static long size(ImportPlan plan) {
        return plan.plants().size() + (long) plan.lots().size();
    }

    /// Applies a plan as a whole or not at all.
    public CatalogRevision apply(ImportPlan plan) {
        return catalog.apply(plan);
    }

    /// The same, telling how far it is.
    public CatalogRevision apply(ImportPlan plan, LoadProgress progress) {
        return catalog.apply(plan, written -> progress.written(written, size(plan)));
    }

    /// Takes the newest import back.
    public UndoneImport undo() {
        return catalog.undo();
    }

    /// Takes an import back if it is still the newest one.
    public UndoneImport undo(long id) {
        return catalog.undo(id);
    }

    public MapShelf maps() {
        return maps;
    }

    /// The own format whose headings the sheet's all are; else a proposal.
    private ColumnMap fitting(Path file, Optional<String> sheet) {
        Set<String> headings;
        try (Sheet rows = SheetReader.open(file, sheet)) {
            headings = new HashSet<>(rows.headings());
        }
        return OWN.stream()
                .filter(map -> map.headings().containsAll(headings))
                .findFirst()
                .orElseGet(() -> propose(file, sheet, "proposed"));
    }
}
