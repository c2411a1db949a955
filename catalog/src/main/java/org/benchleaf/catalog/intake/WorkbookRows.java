package org.benchleaf.catalog.intake;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.shared.Problem;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.SheetVisibility;

/// The rows of one sheet of a workbook, read as a stream: a row at a time is in memory, and the texts that cells
/// share.
final class WorkbookRows implements RowSource {
    /// A sheet of the format has no more columns; source: ECMA-376, 18.3.1.13.
    private static final int MOST_COLUMNS = 16_384;

    private final String file;
    private final ReadableWorkbook workbook;
    private final int sheet;
    private final WorkbookCells cells;
    private final Stream<Row> stream;
    private final Iterator<Row> rows;
    private long lastRow;

    private WorkbookRows(String file, ReadableWorkbook workbook, int sheet, Stream<Row> stream) {
        this.file = file;
        this.sheet = sheet;
        this.workbook = workbook;
        this.cells = new WorkbookCells(workbook.isDate1904());
        this.stream = stream;
        this.rows = stream.iterator();
    }

    /// What was opened, and what a person should know of it.
    ///
    /// @param file its name, with the sheet's when it has several
    record Opened(String file, WorkbookRows rows, List<Finding> findings) {}

    /// Opens the sheet of this name, or the first visible one.
    ///
    /// @throws SheetException `file.xlsx` when it is no workbook or a broken one, `file.sheet` when it has no
    ///     such sheet
    static Opened open(String file, WorkbookSource source, Optional<String> sheet) {
        try {
            ReadableWorkbook workbook = source.open();
            try {
                return open(file, workbook, sheet);
            } catch (IOException | RuntimeException refused) {
                workbook.close();
                throw refused;
            }
        } catch (SheetException refused) {
            throw refused;
        } catch (IOException | RuntimeException broken) {
            throw new SheetException(Problem.of("file.xlsx", file), broken);
        }
    }

    /// Makes a workbook; the library throws what it likes.
    interface WorkbookSource {
        ReadableWorkbook open() throws IOException;
    }

    private static Opened open(String file, ReadableWorkbook workbook, Optional<String> sheet) throws IOException {
        List<org.dhatim.fastexcel.reader.Sheet> sheets = workbook.getSheets()
                .filter(each -> each.getVisibility() == SheetVisibility.VISIBLE)
                .toList();
        List<String> names =
                sheets.stream().map(org.dhatim.fastexcel.reader.Sheet::getName).toList();
        org.dhatim.fastexcel.reader.Sheet chosen = sheets.stream()
                .filter(each ->
                        sheet.map(name -> each.getName().equalsIgnoreCase(name)).orElse(true))
                .findFirst()
                .orElseThrow(() -> new SheetException(Problem.of("file.sheet", sheet.orElse(""))
                        .with("file", file)
                        .with("accepted", String.join(", ", names))));
        String place = names.size() > 1 ? file + ", " + chosen.getName() : file;
        List<Finding> findings = new ArrayList<>();
        if (names.size() > 1 && sheet.isEmpty()) {
            findings.add(new Finding(
                    new Place(place, 1, Optional.empty()),
                    Problem.of("file.sheets", chosen.getName()).with("sheets", String.join(", ", names)),
                    Finding.Outcome.KEPT));
        }
        return new Opened(place, new WorkbookRows(place, workbook, chosen.getIndex(), chosen.openStream()), findings);
    }

    @Override
    public Optional<SourceRow> next() {
        try {
            if (!rows.hasNext()) {
                return Optional.empty();
            }
            Row row = rows.next();
            lastRow = row.getRowNum();
            return Optional.of(row(row));
        } catch (RuntimeException broken) {
            throw new SheetException(
                    Problem.of("file.workbook.row", file).with("row", Long.toString(lastRow + 1)), broken);
        }
    }

    /// The sheet's number, from 0.
    int sheet() {
        return sheet;
    }

    /// The row read last, as a spreadsheet counts.
    long at() {
        return lastRow;
    }

    private SourceRow row(Row row) {
        List<String> texts = new ArrayList<>();
        List<CellNote> notes = new ArrayList<>();
        for (int column = 0; column < Math.min(row.getCellCount(), MOST_COLUMNS); column++) {
            Optional<Cell> cell = row.getOptionalCell(column);
            texts.add(cell.map(cells::text).orElse(""));
            if (cell.isPresent()) {
                int at = column;
                cells.note(cell.get()).ifPresent(problem -> notes.add(new CellNote(at, problem, Finding.Outcome.KEPT)));
            }
        }
        return new SourceRow(row.getRowNum(), withoutEnd(texts), notes);
    }

    /// Formatted cells behind the last text are no cells of the row.
    private static List<String> withoutEnd(List<String> texts) {
        int end = texts.size();
        while (end > 0 && texts.get(end - 1).isBlank()) {
            end--;
        }
        return texts.subList(0, end);
    }

    @Override
    public void close() throws IOException {
        stream.close();
        workbook.close();
    }
}
