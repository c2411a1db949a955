package org.benchleaf.catalog.intake;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.benchleaf.shared.Problem;

/// Rows of a file of any kind, one after the other, before anyone asks which of them is the heading.
interface RowSource extends AutoCloseable {
    /// @param number as a spreadsheet counts, from 1
    /// @param cells texts as they stand
    /// @param notes what is odd about single cells
    record SourceRow(long number, List<String> cells, List<CellNote> notes) {
        public SourceRow {
            cells = List.copyOf(cells);
            notes = List.copyOf(notes);
        }

        boolean isBlank() {
            return cells.stream().allMatch(String::isBlank);
        }

        /// The text of a column, from 0; empty beyond the last.
        String cell(int column) {
            return column < cells.size() ? cells.get(column).strip() : "";
        }

        /// How many cells hold a text.
        long filled() {
            return cells.stream().filter(cell -> !cell.isBlank()).count();
        }
    }

    /// @param column from 0
    record CellNote(int column, Problem problem, Finding.Outcome outcome) {}

    /// The next row; empty at the end.
    ///
    /// @throws SheetException when the file turns out to be broken on the way
    Optional<SourceRow> next();

    @Override
    void close() throws IOException;
}
