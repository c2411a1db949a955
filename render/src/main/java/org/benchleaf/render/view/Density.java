package org.benchleaf.render.view;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/// How much room a sheet gives to what; few facts make room for larger figures.
public enum Density {
    OPEN(84, 6.4),
    ROOMY(66, 5),
    USUAL(57, 5),
    CLOSE(50, 4.2),
    TIGHT(42, 3.6);

    /// Height in mm of names, description and margins, about.
    private static final double REST = 75;

    private final double ringMm;
    private final double rowMm;

    Density(double ringMm, double rowMm) {
        this.ringMm = ringMm;
        this.rowMm = rowMm;
    }

    /// Side of the year ring, and height of the size stand.
    public double ringMm() {
        return ringMm;
    }

    /// Its name in style sheets.
    public String style() {
        return name().toLowerCase(Locale.ROOT);
    }

    /// Whether it is worth trying: not when the rows of the sheet are far too many for it.
    ///
    /// @param rows of facts, cautions and stock, headings counted as two
    boolean worthTrying(int rows, double pageHeightMm) {
        return this == TIGHT || REST + ringMm + rows * rowMm < pageHeightMm * 1.08;
    }

    /// The densities to try for a sheet, the most open first.
    public static List<Density> worthTrying(SheetView sheet, double pageHeightMm) {
        int rows = sheet.columns().stream().mapToInt(List::size).max().orElse(0)
                + heading(sheet.landscape().size() + sheet.relatives().size())
                + heading(sheet.cautions().size() + 1)
                + heading(sheet.saleNotes().size())
                + sheet.stock().stream()
                        .mapToInt(stock -> heading(stock.rows().size()))
                        .sum();
        return Stream.of(values())
                .filter(density -> density.worthTrying(rows, pageHeightMm))
                .toList();
    }

    private static int heading(int rows) {
        return rows == 0 ? 0 : rows + 2;
    }
}
