package org.benchleaf.catalog.intake;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.benchleaf.shared.Problem;

/// The rows of a file of delimited values.
final class CsvRows implements RowSource {
    private final String file;
    private final CsvReader<CsvRecord> reader;
    private final Iterator<CsvRecord> records;
    private long number;

    CsvRows(String file, CsvReader<CsvRecord> reader) {
        this.file = file;
        this.reader = reader;
        this.records = reader.iterator();
    }

    @Override
    public Optional<SourceRow> next() {
        try {
            if (!records.hasNext()) {
                return Optional.empty();
            }
            number++;
            return Optional.of(new SourceRow(number, records.next().getFields(), List.of()));
        } catch (CsvParseException | UncheckedIOException broken) {
            throw new SheetException(
                    Problem.of("file.quotes", file).with("row", Long.toString(Math.max(1, number))), broken);
        }
    }

    @Override
    public void close() throws IOException {
        reader.close();
    }
}
