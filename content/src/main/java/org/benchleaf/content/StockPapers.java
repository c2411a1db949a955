package org.benchleaf.content;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;

/// Reads `stock-papers.csv`: inches or millimetres, each row in the unit it names.
final class StockPapers {
    private static final double INCH_MM = 25.4;

    private StockPapers() {}

    static List<StockPaper> read(String csv) {
        return CsvReader.builder().ofNamedCsvRecord(csv).stream()
                .map(StockPapers::paper)
                .toList();
    }

    private static StockPaper paper(NamedCsvRecord row) {
        double unit = switch (row.getField("unit")) {
            case "in" -> INCH_MM;
            case "mm" -> 1;
            default ->
                throw new IllegalArgumentException(
                        row.getField("key") + ": the unit is in or mm; got " + row.getField("unit"));
        };
        return new StockPaper(
                row.getField("key"),
                row.getField("name"),
                number(row, "sheet_width") * unit,
                number(row, "sheet_height") * unit,
                Integer.parseInt(row.getField("columns")),
                Integer.parseInt(row.getField("rows")),
                number(row, "label_width") * unit,
                number(row, "label_height") * unit,
                number(row, "top") * unit,
                number(row, "left") * unit,
                number(row, "pitch_x") * unit,
                number(row, "pitch_y") * unit,
                number(row, "corner_radius_mm"),
                row.getField("source"));
    }

    private static double number(NamedCsvRecord row, String field) {
        return Double.parseDouble(row.getField(field));
    }
}
