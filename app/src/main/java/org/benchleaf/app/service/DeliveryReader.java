package org.benchleaf.app.service;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.app.Refusal;
import org.benchleaf.catalog.intake.RawRow;
import org.benchleaf.catalog.intake.Sheet;
import org.benchleaf.catalog.intake.SheetReader;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.stock.StockSize;

/// Reads what arrived from a delivery's spreadsheet: which plant, in which size, how many. A row that is not understood
/// stops the whole, so that nothing is printed by half.
public final class DeliveryReader {
    private static final Set<String> PLANT = Set.of("plant", "name", "key", "botanical name");
    private static final Set<String> SIZE = Set.of("size", "container");
    private static final Set<String> COUNT = Set.of("count", "quantity", "qty", "number");
    private static final int MOST = 10_000;

    private DeliveryReader() {}

    /// @throws Refusal when a column is missing, or a row names no plant, size or number
    public static List<Wanted> read(Path file, PlantFinder finder) {
        try (Sheet sheet = SheetReader.open(file)) {
            List<String> headings = sheet.headings().stream()
                    .map(heading -> heading.strip().toLowerCase(Locale.ROOT))
                    .toList();
            int plant = column(headings, PLANT);
            if (plant < 0) {
                throw new Refusal(
                        Problem.of("delivery.plant", sheet.file()).with("found", String.join(", ", sheet.headings())));
            }
            int size = column(headings, SIZE);
            int count = column(headings, COUNT);
            List<Wanted> wanted = new ArrayList<>();
            sheet.rows()
                    .filter(row -> !cell(row, plant).isEmpty())
                    .forEach(row -> wanted.add(new Wanted(
                            finder.find(cell(row, plant)), size(sheet, row, size), count(sheet, row, count))));
            return wanted;
        }
    }

    private static int column(List<String> headings, Set<String> names) {
        for (int at = 0; at < headings.size(); at++) {
            if (names.contains(headings.get(at))) {
                return at;
            }
        }
        return -1;
    }

    private static String cell(RawRow row, int column) {
        return column < 0 || column >= row.cells().size() ? "" : row.cells().get(column);
    }

    private static Optional<StockSize> size(Sheet sheet, RawRow row, int column) {
        String text = cell(row, column);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                StockSize.read(text).toOptional().orElseThrow(() -> refused("delivery.size", text, sheet, row)));
    }

    private static Optional<Integer> count(Sheet sheet, RawRow row, int column) {
        String text = cell(row, column);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        if (!text.matches("[1-9][0-9]{0,4}") || Integer.parseInt(text) > MOST) {
            throw refused("delivery.count", text, sheet, row);
        }
        return Optional.of(Integer.parseInt(text));
    }

    private static Refusal refused(String problem, String text, Sheet sheet, RawRow row) {
        return new Refusal(
                Problem.of(problem, text).with("file", sheet.file()).with("row", Long.toString(row.number())));
    }
}
