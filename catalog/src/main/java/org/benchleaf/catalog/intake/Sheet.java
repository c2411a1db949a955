package org.benchleaf.catalog.intake;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.Spliterators;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.benchleaf.shared.Problem;

/// An open file of rows. Its rows are read once, one after the other; close it after use.
public final class Sheet implements AutoCloseable {
    private final String file;
    private final char delimiter;
    private final CsvReader<CsvRecord> reader;
    private final Iterator<CsvRecord> records;
    private final List<String> headings;
    private final List<Finding> findings;
    private final RowCheck check;
    private long number;

    Sheet(String file, char delimiter, CsvReader<CsvRecord> reader, boolean declared, List<Finding> ofFile) {
        this.file = file;
        this.delimiter = delimiter;
        this.reader = reader;
        this.records = reader.iterator();
        this.findings = new ArrayList<>(ofFile);
        if (declared) {
            next();
        }
        Optional<CsvRecord> heading = next();
        while (heading.filter(Sheet::isBlank).isPresent()) {
            heading = next();
        }
        this.headings = heading.map(
                        row -> row.getFields().stream().map(String::strip).toList())
                .orElseThrow(() -> new SheetException(Problem.of("file.empty", file)));
        this.check = new RowCheck(file, delimiter, headings);
    }

    /// The file's name, without folders.
    public String file() {
        return file;
    }

    /// The headings in the order of columns; an empty text where a column has none.
    public List<String> headings() {
        return headings;
    }

    /// What parts the cells: `,`, `;`, tab or `|`.
    public char delimiter() {
        return delimiter;
    }

    /// What a person should know of the file as a whole.
    public List<Finding> findings() {
        return List.copyOf(findings);
    }

    /// The rows below the heading; empty ones are passed over, and count as a spreadsheet counts them.
    ///
    /// @throws SheetException from the stream, when a quote is opened and never closed
    public Stream<RawRow> rows() {
        Iterator<RawRow> rows = new Iterator<>() {
            private Optional<RawRow> ahead = advance();

            @Override
            public boolean hasNext() {
                return ahead.isPresent();
            }

            @Override
            public RawRow next() {
                RawRow row = ahead.orElseThrow();
                ahead = advance();
                return row;
            }
        };
        return StreamSupport.stream(Spliterators.spliteratorUnknownSize(rows, 0), false);
    }

    private Optional<RawRow> advance() {
        Optional<CsvRecord> record = next();
        while (record.filter(Sheet::isBlank).isPresent()) {
            record = next();
        }
        return record.map(fields -> check.row(number, fields.getFields()));
    }

    private Optional<CsvRecord> next() {
        try {
            if (!records.hasNext()) {
                return Optional.empty();
            }
            number++;
            return Optional.of(records.next());
        } catch (CsvParseException | UncheckedIOException broken) {
            throw new SheetException(
                    Problem.of("file.quotes", file).with("row", Long.toString(Math.max(1, number))), broken);
        }
    }

    private static boolean isBlank(CsvRecord row) {
        return row.getFields().stream().allMatch(String::isBlank);
    }

    @Override
    public void close() {
        try {
            reader.close();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
