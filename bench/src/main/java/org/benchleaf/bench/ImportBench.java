package org.benchleaf.bench;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.catalog.Catalog;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.ImportDiff;
import org.benchleaf.catalog.UndoneImport;
import org.benchleaf.catalog.export.CatalogExport;
import org.benchleaf.catalog.intake.ColumnMap;
import org.benchleaf.catalog.intake.ColumnMaps;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.catalog.intake.ImportPlanner;
import org.benchleaf.catalog.intake.LotDraft;
import org.benchleaf.catalog.intake.PlantDraft;
import org.benchleaf.catalog.intake.Sheet;
import org.benchleaf.catalog.intake.SheetReader;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Fact;

/// Loads spreadsheets of made-up plants and lots as a grower would: read, preview, load, load again, take
/// back.
final class ImportBench {
    private static final int PIECE = 1_000;
    private static final List<String> FACTS = List.of(
            "life_form",
            "habit",
            "foliage",
            "hardiness",
            "height",
            "spread",
            "exposure",
            "moisture",
            "drought_tolerance",
            "wet_tolerance",
            "salt_soil",
            "deer",
            "flower_color",
            "bloom",
            "fall_color",
            "wildlife",
            "uses",
            "native_states");

    private final PrintStream out;
    private final Catalog catalog;

    private ImportBench(PrintStream out, Catalog catalog) {
        this.out = out;
        this.catalog = catalog;
    }

    static void run(int rows, PrintStream out) throws IOException {
        Path folder = Files.createTempDirectory("benchleaf-import");
        try (Catalog catalog = Catalog.create(folder.resolve("catalog.db"))) {
            new ImportBench(out, catalog).run(rows, folder);
        } finally {
            try (Stream<Path> files = Files.walk(folder)) {
                files.sorted(Comparator.reverseOrder())
                        .forEach(file -> file.toFile().delete());
            }
        }
    }

    private void run(int rows, Path folder) throws IOException {
        Path plants = plants(folder.resolve("plants.csv"), rows, false);
        Path taller = plants(folder.resolve("taller.csv"), rows, true);
        Path stock = stock(folder.resolve("stock.csv"), rows);
        out.printf(
                Locale.ROOT,
                "%,d rows of plants (%d MiB), %,d of stock (%d MiB); heap limit %d MiB%n",
                rows,
                Files.size(plants) >> 20,
                rows,
                Files.size(stock) >> 20,
                Runtime.getRuntime().maxMemory() >> 20);
        load("plants, new", plants, ColumnMaps.ownPlants());
        load("plants, the same again", plants, ColumnMaps.ownPlants());
        preview(taller);
        load("plants, one height in ten changed", taller, ColumnMaps.ownPlants());
        load("stock, new", stock, ColumnMaps.ownStock());
        Path workbook = folder.resolve("plants.xlsx");
        timed("export of plants to a workbook", rows, () -> {
            try (OutputStream file = new BufferedOutputStream(Files.newOutputStream(workbook))) {
                CatalogExport.plants(catalog.view(), CatalogExport.Format.XLSX, false, file);
            }
            return "";
        });
        load("the workbook, nothing changed", workbook, ColumnMaps.ownPlants());
        timed("undo of the stock", rows, () -> {
            UndoneImport undone = catalog.undo();
            return ", " + undone.lotsTakenOut() + " lots taken out";
        });
    }

    private void load(String what, Path file, ColumnMap map) throws IOException {
        ImportPlan[] plan = new ImportPlan[1];
        int rows = timed(what + ": read", 0, () -> {
            plan[0] = plan(file, map);
            return ", " + plan[0].findings().size() + " findings";
        });
        timed(what + ": load", rows, () -> {
            CatalogRevision before = plan[0].base();
            return catalog.apply(plan[0]).equals(before) ? ", nothing changed" : "";
        });
    }

    private int lastRows;

    private ImportPlan plan(Path file, ColumnMap map) {
        try (Sheet sheet = SheetReader.open(file)) {
            ImportPlan plan = ImportPlanner.plan(sheet, map, catalog.names());
            lastRows = (int) plan.rows();
            return plan;
        }
    }

    private void preview(Path file) throws IOException {
        ImportPlan plan = plan(file, ColumnMaps.ownPlants());
        timed("preview of changes", lastRows, () -> {
            ImportDiff diff = catalog.rehearse(plan, 100);
            return ", " + diff.changedPlants() + " changed, " + diff.samePlants() + " the same";
        });
    }

    private interface Step {
        String run() throws IOException;
    }

    private int timed(String what, int rows, Step step) throws IOException {
        Memory.forgetPeak();
        long start = System.nanoTime();
        String note = step.run();
        double seconds = (System.nanoTime() - start) / 1e9;
        int count = rows == 0 ? lastRows : rows;
        out.printf(
                Locale.ROOT,
                "  %-44s %6.1f s %,9.0f rows/s, peak heap %d MiB%s%n",
                what,
                seconds,
                count / seconds,
                Memory.peakMiB(),
                note);
        return count;
    }

    private static Path plants(Path file, int rows, boolean taller) throws IOException {
        try (Writer out = Files.newBufferedWriter(file)) {
            out.write("name,common_names," + String.join(",", FACTS) + ",source\n");
            for (int from = 0; from < rows; from += PIECE) {
                ImportPlan plan = SyntheticCatalog.plan(new CatalogRevision(0), from, Math.min(rows, from + PIECE));
                int number = from;
                for (PlantDraft draft : plan.plants()) {
                    out.write(line(draft, taller && number++ % 10 == 0));
                }
            }
        }
        return file;
    }

    private static String line(PlantDraft draft, boolean taller) {
        Map<String, String> facts = draft.facts().stream()
                .collect(Collectors.toMap(fact -> fact.attribute().id(), Fact::text));
        if (taller) {
            facts.put(Attributes.HEIGHT.id(), "99-123 cm");
        }
        List<String> cells = new ArrayList<>();
        cells.add(draft.name().toString());
        cells.add(draft.commonNames().get(0).text());
        FACTS.forEach(fact -> cells.add(facts.getOrDefault(fact, "")));
        cells.add("made up for a benchmark");
        return line(cells);
    }

    private static Path stock(Path file, int rows) throws IOException {
        try (Writer out = Files.newBufferedWriter(file)) {
            out.write("lot,name,size,place,count,ready_week,price\n");
            int written = 0;
            for (int from = 0; written < rows; from += PIECE) {
                for (LotDraft lot : SyntheticCatalog.plan(new CatalogRevision(0), from, Math.min(rows, from + PIECE))
                        .lots()) {
                    if (written++ < rows) {
                        out.write(line(List.of(
                                lot.lot(),
                                lot.name().toString(),
                                lot.size().toString(),
                                lot.where(),
                                Integer.toString(lot.count()),
                                text(lot, LotDraft::ready),
                                lot.price().map(price -> price.amount()).orElse(""))));
                    }
                }
            }
        }
        return file;
    }

    private static String text(LotDraft lot, Function<LotDraft, java.util.Optional<?>> of) {
        return of.apply(lot).map(Object::toString).orElse("");
    }

    private static String line(List<String> cells) {
        return cells.stream()
                        .map(cell -> cell.matches("[^,\"]*") ? cell : '"' + cell.replace("\"", "\"\"") + '"')
                        .collect(Collectors.joining(","))
                + "\n";
    }
}
