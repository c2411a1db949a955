package org.benchleaf.bench.eval;

import java.util.Map;

/// The cells of a row of published values.
final class Cells {
    private Cells() {}

    /// The cell under a heading.
    ///
    /// @throws IllegalArgumentException when the row has none
    static String of(Map<String, String> row, String heading) {
        String cell = row.get(heading);
        if (cell == null) {
            throw new IllegalArgumentException("no column " + heading + " in " + row.keySet());
        }
        return cell;
    }
}
