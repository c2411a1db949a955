package org.benchleaf.catalog.intake;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Spliterators;
import java.util.function.DoubleSupplier;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/// An open file of rows. Its rows are read once, one after the other; close it after use.
public final class Sheet implements AutoCloseable {
    private final String file;
    private final char delimiter;
    private final RowSource source;
    private final HeadingRows below;
    private final List<Finding> findings;
    private final RowCheck check;
    private final DoubleSupplier share;

    /// @param share how much of the file is read, 0 to 1; negative when nobody can tell
    Sheet(String file, char delimiter, RowSource source, List<Finding> ofFile, DoubleSupplier share) {
        this.share = share;
        this.file = file;
        this.delimiter = delimiter;
        this.source = source;
        this.below = new HeadingRows(file, source);
        this.findings = new ArrayList<>(ofFile);
        findings.addAll(below.findings());
        this.check = new RowCheck(file, delimiter, below.headings());
    }

    /// The file's name, without folders; of a workbook with several sheets the sheet's name after it.
    public String file() {
        return file;
    }

    /// The headings in the order of columns; an empty text where a column has none.
    public List<String> headings() {
        return below.headings();
    }

    /// What parts the cells: `,`, `;`, tab or `|`; a zero character for a workbook.
    public char delimiter() {
        return delimiter;
    }

    /// How much of the file is read, 0 to 1; empty for a workbook that does not say how long it is.
    public OptionalDouble share() {
        double known = share.getAsDouble();
        return known < 0 ? OptionalDouble.empty() : OptionalDouble.of(known);
    }

    /// What a person should know of the file as a whole.
    public List<Finding> findings() {
        return List.copyOf(findings);
    }

    /// The rows below the heading; empty ones are passed over, and count as a spreadsheet counts them.
    ///
    /// @throws SheetException from the stream, when a quote is opened and never closed or a workbook is
    ///     broken
    public Stream<RawRow> rows() {
        Iterator<RawRow> rows = new Iterator<>() {
            private Optional<RawRow> ahead = below.next().map(check::row);

            @Override
            public boolean hasNext() {
                return ahead.isPresent();
            }

            @Override
            public RawRow next() {
                RawRow row = ahead.orElseThrow();
                ahead = below.next().map(check::row);
                return row;
            }
        };
        return StreamSupport.stream(Spliterators.spliteratorUnknownSize(rows, 0), false);
    }

    @Override
    public void close() {
        try {
            source.close();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
