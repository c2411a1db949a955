package org.benchleaf.app.web.staff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.service.AuditReport;
import org.benchleaf.catalog.audit.AuditSums;
import org.benchleaf.catalog.audit.PlantAudit;

/// What the audit of the catalog found, for the page where the day begins: sums, and the worst of it plant by plant.
final class Findings {
    private static final int SHOWN = 8;
    private static final int KEPT = 200;

    private final Benchleaf benchleaf;
    private final AuditReport report;
    private final Meanwhile<Found> audit;

    Findings(Benchleaf benchleaf) {
        this.benchleaf = benchleaf;
        this.report = new AuditReport(benchleaf.wording());
        this.audit = new Meanwhile<>(() -> benchleaf.catalog().revision(), this::look);
    }

    /// @param sums how many of each kind, one a line
    /// @param rows the worst first
    record Found(List<String> sums, List<HomePage.Row> rows) {}

    /// Empty while it is being looked through.
    Optional<Found> now() {
        return audit.now();
    }

    private record One(PlantAudit plant, PlantAudit.Remark remark) {}

    private Found look() {
        List<One> worst = new ArrayList<>();
        AuditSums sums = benchleaf.audit(plant -> plant.remarks().stream()
                .filter(remark -> remark.kind() != PlantAudit.Kind.GAP && worst.size() < KEPT)
                .forEach(remark -> worst.add(new One(plant, remark))));
        List<String> lines = new ArrayList<>();
        for (PlantAudit.Kind kind : PlantAudit.Kind.values()) {
            int count = sums.byKind().getOrDefault(kind, 0);
            if (count > 0) {
                String word =
                        benchleaf.wording().text("audit.kind." + kind.name().toLowerCase(Locale.ROOT));
                lines.add(benchleaf
                        .wording()
                        .text(
                                "desk.home.kind.line",
                                Map.of(
                                        "kind",
                                        word,
                                        "count",
                                        benchleaf.wording().count(count))));
            }
        }
        return new Found(
                lines,
                worst.stream()
                        .sorted(Comparator.comparing((One one) -> one.remark().kind()))
                        .limit(SHOWN)
                        .map(one -> new HomePage.Row(
                                one.plant().name().toString(),
                                "/desk/plants/" + one.plant().key() + "#"
                                        + one.remark().attribute(),
                                report.text(one.remark())))
                        .toList());
    }
}
