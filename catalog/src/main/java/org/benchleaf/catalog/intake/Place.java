package org.benchleaf.catalog.intake;

import java.util.Optional;

/// Where in a spreadsheet something stood.
///
/// @param file the file's name, without folders
/// @param row as a spreadsheet counts: the heading is row 1
/// @param column the column's heading; empty when the whole row is meant
public record Place(String file, long row, Optional<String> column) {
    /// `plants.csv row 14, column hardiness`
    @Override
    public String toString() {
        return file + " row " + row
                + column.map(heading -> ", column " + heading).orElse("");
    }
}
