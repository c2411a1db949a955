package org.benchleaf.catalog.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.shared.Problem;

/// The findings of one row while it is being understood.
final class RowNotes {
    private final String file;
    private final long row;
    private final List<Finding> findings = new ArrayList<>();

    RowNotes(String file, RawRow row) {
        this.file = file;
        this.row = row.number();
        this.findings.addAll(row.findings());
    }

    void kept(String heading, Problem problem) {
        add(heading, problem, Finding.Outcome.KEPT);
    }

    void cellLeftOut(String heading, Problem problem) {
        add(heading, problem, Finding.Outcome.CELL_LEFT_OUT);
    }

    void rowLeftOut(String heading, Problem problem) {
        add(heading, problem, Finding.Outcome.ROW_LEFT_OUT);
    }

    void add(String heading, Problem problem, Finding.Outcome outcome) {
        Finding finding = new Finding(new Place(file, row, Optional.of(heading)), problem, outcome);
        if (!findings.contains(finding)) { // a name is read for the plant and for its lot
            findings.add(finding);
        }
    }

    Place place() {
        return new Place(file, row, Optional.empty());
    }

    long row() {
        return row;
    }

    boolean isLeftOut() {
        return findings.stream().anyMatch(finding -> finding.outcome() == Finding.Outcome.ROW_LEFT_OUT);
    }

    List<Finding> findings() {
        return List.copyOf(findings);
    }
}
