package org.benchleaf.content;

/// A sheet of stock paper: how big it is and where its cells lie, all in **millimetres** from the top left corner.
///
/// @param key for settings and commands, such as `letter-30`
/// @param name for people
/// @param sheetWidth of the whole sheet
/// @param sheetHeight of the whole sheet
/// @param columns 1 or more
/// @param rows 1 or more
/// @param labelWidth of one cell
/// @param labelHeight of one cell
/// @param top from the sheet's top edge to the first cell
/// @param left from the sheet's left edge to the first cell
/// @param pitchX from the left edge of one cell to that of the next
/// @param pitchY from the top edge of one cell to that of the next
/// @param cornerRadius of the cells; 0 for square ones
/// @param source who states the geometry
/// @throws IllegalArgumentException when cells overlap or leave the sheet
public record StockPaper(
        String key,
        String name,
        double sheetWidth,
        double sheetHeight,
        int columns,
        int rows,
        double labelWidth,
        double labelHeight,
        double top,
        double left,
        double pitchX,
        double pitchY,
        double cornerRadius,
        String source) {
    /// What rounding in a published table may amount to.
    private static final double SLACK_MM = 0.05;

    public StockPaper {
        if (columns < 1 || rows < 1 || labelWidth <= 0 || labelHeight <= 0 || top < 0 || left < 0) {
            throw new IllegalArgumentException(key + ": a stock paper has cells of some size on the sheet");
        }
        if (columns > 1 && pitchX < labelWidth - SLACK_MM || rows > 1 && pitchY < labelHeight - SLACK_MM) {
            throw new IllegalArgumentException(key + ": cells overlap");
        }
        if (left + (columns - 1) * pitchX + labelWidth > sheetWidth + SLACK_MM
                || top + (rows - 1) * pitchY + labelHeight > sheetHeight + SLACK_MM) {
            throw new IllegalArgumentException(key + ": cells leave the sheet");
        }
    }

    /// Cells on one sheet.
    public int cells() {
        return columns * rows;
    }

    /// Left edge of a column's cells in mm.
    ///
    /// @param column from 0
    public double x(int column) {
        return left + column * pitchX;
    }

    /// Top edge of a row's cells in mm.
    ///
    /// @param row from 0
    public double y(int row) {
        return top + row * pitchY;
    }
}
