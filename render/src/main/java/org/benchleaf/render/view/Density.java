package org.benchleaf.render.view;

import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/// How much room a sheet gives to what; few facts make room for larger figures.
public enum Density {
    OPEN(84, 106, 6.4),
    ROOMY(66, 98, 5),
    USUAL(57, 88, 5),
    CLOSE(50, 0, 4.2),
    TIGHT(42, 0, 3.6);

    /// Height in mm of names, description and margins, about.
    private static final double REST = 75;

    private final double ringMm;
    private final double photoMm;
    private final double rowMm;

    Density(double ringMm, double photoMm, double rowMm) {
        this.ringMm = ringMm;
        this.photoMm = photoMm;
        this.rowMm = rowMm;
    }

    /// Side of the year ring, and height of the size stand.
    public double ringMm() {
        return ringMm;
    }

    /// Height of a photograph that stands beside ring and stand, one under the other; 0 when all three stand in a row.
    public double photoMm() {
        return photoMm;
    }

    /// Its name in style sheets.
    public String style() {
        return name().toLowerCase(Locale.ROOT);
    }

    /// Whether it is worth trying: not when the rows of the sheet are far too many for it.
    ///
    /// @param figuresMm height of its figures
    /// @param rows of facts, cautions and stock, headings counted as two
    boolean worthTrying(double figuresMm, int rows, double pageHeightMm) {
        return this == TIGHT || REST + figuresMm + rows * rowMm < pageHeightMm * 1.08;
    }

    /// The densities to try for a sheet, the most open first.
    ///
    /// @param figuresMm height of the figures of each
    public static List<Density> worthTrying(SheetView sheet, double pageHeightMm, ToDoubleFunction<Density> figuresMm) {
        int rows = sheet.columns().stream().mapToInt(List::size).max().orElse(0)
                + heading(sheet.landscape().size() + sheet.relatives().size())
                + heading(sheet.cautions().size() + 1)
                + heading(sheet.saleNotes().size())
                + sheet.stock().stream()
                        .mapToInt(stock -> heading(stock.rows().size()))
                        .sum();
        return Stream.of(values())
                .filter(density -> density.worthTrying(figuresMm.applyAsDouble(density), rows, pageHeightMm))
                .toList();
    }

    private static int heading(int rows) {
        return rows == 0 ? 0 : rows + 2;
    }
}
