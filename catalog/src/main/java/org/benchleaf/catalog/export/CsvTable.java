package org.benchleaf.catalog.export;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.regex.Pattern;

/// A file of comma-separated values, UTF-8 with a mark so that spreadsheet programs see the letters, and safe
/// to open in one: a text that would run as a formula begins with an apostrophe. A number does not, negative
/// ones too.
final class CsvTable implements TableWriter {
    /// With which formulas begin; source: OWASP, CSV Injection.
    private static final Pattern FORMULA = Pattern.compile("(?s)[=+\\-@\\t\\r].*");

    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d[\\d.,]*%?");

    private final CsvWriter writer;

    CsvTable(Writer out) throws IOException {
        out.write('\uFEFF');
        this.writer = CsvWriter.builder().build(out);
    }

    @Override
    public void row(List<String> cells) {
        writer.writeRecord(cells.stream().map(CsvTable::safe).toList());
    }

    static String safe(String cell) {
        return FORMULA.matcher(cell).matches() && !NUMBER.matcher(cell).matches() ? "'" + cell : cell;
    }

    @Override
    public void close() throws IOException {
        writer.close();
    }
}
