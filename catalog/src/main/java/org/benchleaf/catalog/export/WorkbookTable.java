package org.benchleaf.catalog.export;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/// A workbook of one sheet. Every cell is text, so that no program makes a date of `5-9`, a number of a key, or
/// runs a text as a formula.
final class WorkbookTable implements TableWriter {
    private static final int FLUSH = 1000;

    private final Workbook workbook;
    private final Worksheet sheet;
    private int row;

    WorkbookTable(OutputStream out, String name) {
        this.workbook = new Workbook(out, "Benchleaf", "1.0");
        this.sheet = workbook.newWorksheet(name);
        sheet.freezePane(0, 1);
    }

    @Override
    public void row(List<String> cells) throws IOException {
        for (int column = 0; column < cells.size(); column++) {
            if (!cells.get(column).isEmpty()) {
                sheet.inlineString(row, column, cells.get(column));
                sheet.style(row, column).format("@").set();
            }
        }
        row++;
        if (row % FLUSH == 0) {
            sheet.flush();
        }
    }

    @Override
    public void close() throws IOException {
        workbook.finish();
        workbook.close();
    }
}
