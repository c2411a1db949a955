package org.benchleaf.catalog.intake;

import org.benchleaf.shared.Problem;

/// What a column says of a row, in the catalog's words.
sealed interface CellText {
    /// Nothing stands there, or what stands there says nothing.
    record Absent() implements CellText {}

    /// @param read as it stands in the file
    /// @param text as the catalog would write it
    record Stated(String read, String text) implements CellText {}

    /// What stands there has no meaning by the column map.
    record Unclear(Problem problem) implements CellText {}
}
