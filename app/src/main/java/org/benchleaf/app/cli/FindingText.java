package org.benchleaf.app.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.benchleaf.catalog.intake.Finding;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.content.Wording;

/// A plan as text for a terminal: one line a finding (where, what was read, what is accepted, what was done),
/// then the sums.
final class FindingText {
    private final Wording wording;

    FindingText(Wording wording) {
        this.wording = wording;
    }

    /// @param most how many findings are written out; the sums count all
    void write(ImportPlan plan, int most, PrintWriter out) {
        List<Finding> findings = plan.findings();
        findings.stream().limit(most).forEach(finding -> out.println(line(finding)));
        if (findings.size() > most) {
            out.println(wording.text("load.more-findings", Map.of("count", wording.count(findings.size() - most))));
        }
        long loaded = (long) plan.plants().size() + plan.lots().size();
        out.println(wording.text(
                "load.sum",
                Map.of(
                        "file", plan.file(),
                        "rows", wording.count(plan.rows()),
                        "loaded", wording.count(loaded),
                        "left", wording.count(plan.rowsLeftOut()),
                        "findings", wording.count(findings.size()))));
    }

    /// A line of a preview: `!` for a row that is refused, `?` for what is doubtful, `·` for a row passed over.
    String marked(Finding finding) {
        String mark = switch (finding.outcome()) {
            case ROW_LEFT_OUT -> "! ";
            case PASSED_OVER -> "· ";
            case KEPT, CELL_LEFT_OUT -> "? ";
        };
        return mark + line(finding);
    }

    String line(Finding finding) {
        String outcome = wording.text("load.outcome."
                + finding.outcome().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        String problem = wording.problem(finding.problem());
        return finding.place() + ": " + problem + (problem.endsWith(".") || problem.endsWith("?") ? " " : ". ")
                + outcome;
    }
}
