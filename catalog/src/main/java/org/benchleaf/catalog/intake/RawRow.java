package org.benchleaf.catalog.intake;

import java.util.List;

/// One row of a file as it stands, before anyone asks what its cells mean.
///
/// @param number as a spreadsheet counts: the heading is row 1
/// @param cells texts without blanks around them, one for each heading; an empty text where nothing stands
/// @param findings what is odd about the row itself; one that leaves the row out forbids its use
public record RawRow(long number, List<String> cells, List<Finding> findings) {
    public RawRow {
        cells = List.copyOf(cells);
        findings = List.copyOf(findings);
    }

    boolean isUsable() {
        return findings.stream().noneMatch(finding -> finding.outcome() == Finding.Outcome.ROW_LEFT_OUT);
    }
}
