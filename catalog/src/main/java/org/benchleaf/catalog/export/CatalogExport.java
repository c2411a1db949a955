package org.benchleaf.catalog.export;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.catalog.model.PlantRecord;

/// Writes plants or stock in the catalog's own format: loaded again, the file changes nothing.
///
/// Of facts that several sources state the chosen one is written, or with every source a row of each
/// other one before it, each with its rank; what a cultivar takes from its taxon is left empty.
public final class CatalogExport {
    private CatalogExport() {}

    /// What kind of file.
    public enum Format {
        CSV,
        XLSX
    }

    /// Every plant that is grown, one row each, in the order of keys.
    ///
    /// @param darwinCore whether columns of Darwin Core terms stand behind the own ones
    /// @return how many
    /// @throws IOException when nothing can be written there
    public static int plants(CatalogView view, Format format, boolean darwinCore, OutputStream out) throws IOException {
        return plants(view, format, darwinCore, false, out);
    }

    /// The same.
    ///
    /// @param everySource whether facts that are not chosen are written too, a row for each source before
    ///     the chosen
    /// @return how many rows
    /// @throws IOException when nothing can be written there
    public static int plants(CatalogView view, Format format, boolean darwinCore, boolean everySource, OutputStream out)
            throws IOException {
        try (TableWriter table = table(format, "Plants", out)) {
            List<String> headings = new ArrayList<>(PlantTable.headings());
            headings.addAll(darwinCore ? DarwinCore.TERMS : List.of());
            table.row(headings);
            int[] count = new int[1];
            BiConsumer<PlantRecord, List<List<String>>> plantRows = (plant, rows) -> {
                for (List<String> own : rows) {
                    List<String> cells = new ArrayList<>(own);
                    cells.addAll(darwinCore ? DarwinCore.cells(plant) : List.of());
                    write(table, cells);
                    count[0]++;
                }
            };
            if (everySource) {
                view.forEachStated((plant, own) -> plantRows.accept(plant, SourceRows.of(plant, own)));
            } else {
                view.forEachPlant(plant -> plantRows.accept(plant, List.of(PlantTable.cells(plant))));
            }
            return count[0];
        } catch (UncheckedIOException unwritable) {
            throw unwritable.getCause();
        }
    }

    /// Every lot, one row each.
    ///
    /// @return how many
    /// @throws IOException when nothing can be written there
    public static int stock(CatalogView view, Format format, OutputStream out) throws IOException {
        try (TableWriter table = table(format, "Stock", out)) {
            table.row(StockTable.headings());
            int[] count = new int[1];
            view.forEachStock(stock -> view.plant(stock.plant())
                    .ifPresent(plant -> StockTable.rows(plant, stock).forEach(cells -> {
                        write(table, cells);
                        count[0]++;
                    })));
            return count[0];
        } catch (UncheckedIOException unwritable) {
            throw unwritable.getCause();
        }
    }

    /// Any rows of texts, such as a plant list.
    ///
    /// @param name of the sheet in a workbook
    /// @throws IOException when nothing can be written there
    public static void table(
            Format format, String name, List<String> headings, List<List<String>> rows, OutputStream out)
            throws IOException {
        try (TableWriter table = table(format, sheetName(name), out)) {
            table.row(headings);
            for (List<String> row : rows) {
                table.row(row);
            }
        }
    }

    /// A workbook's sheet has at most 31 characters and none of these.
    private static String sheetName(String name) {
        String allowed = name.replaceAll("[\\[\\]:*?/\\\\']", " ").strip();
        return allowed.isEmpty() ? "List" : allowed.substring(0, Math.min(31, allowed.length()));
    }

    private static TableWriter table(Format format, String name, OutputStream out) throws IOException {
        return switch (format) {
            case CSV -> new CsvTable(new OutputStreamWriter(out, StandardCharsets.UTF_8));
            case XLSX -> new WorkbookTable(out, name);
        };
    }

    private static void write(TableWriter table, List<String> cells) {
        try {
            table.row(cells);
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }
}
