package org.benchleaf.app.service;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.benchleaf.catalog.audit.AuditSums;
import org.benchleaf.catalog.audit.PlantAudit;
import org.benchleaf.catalog.audit.PlantAudit.Kind;
import org.benchleaf.catalog.audit.PlantAudit.Remark;
import org.benchleaf.content.Wording;
import org.benchleaf.render.page.Report;
import org.benchleaf.render.page.Report.Mark;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.measure.LengthRange;

/// An audit in words, for a terminal and for a page.
public final class AuditReport {
    private final Wording wording;

    public AuditReport(Wording wording) {
        this.wording = wording;
    }

    /// @param plants those that are told, the least known first
    public Report page(AuditSums sums, List<PlantAudit> plants, long revision) {
        List<Report.Section> sections = new ArrayList<>();
        sections.add(section("gaps", gaps(sums)));
        List<Report.Row> remarks = new ArrayList<>();
        for (PlantAudit plant : plants) {
            plant.remarks().stream()
                    .filter(remark -> remark.kind() != Kind.GAP)
                    .forEach(remark -> remarks.add(new Report.Row(
                            remark.kind() == Kind.IMPOSSIBLE ? Mark.REFUSED : Mark.DOUBTFUL,
                            List.of(plant.name().toString(), heading(remark.attribute()), text(remark)))));
        }
        sections.add(section("remarks", remarks));
        sections.add(section(
                "plants",
                plants.stream()
                        .map(plant -> new Report.Row(
                                Mark.SAME,
                                List.of(plant.name().toString(), Integer.toString(plant.score()), missing(plant))))
                        .toList()));
        return new Report(
                wording.text("audit.title"),
                wording.text(
                        "audit.note",
                        Map.of("plants", wording.count(sums.plants()), "revision", Long.toString(revision))),
                sums(sums),
                sections);
    }

    private Report.Section section(String kind, List<Report.Row> rows) {
        List<String> columns = List.of(wording.text("audit.columns." + kind).split("\\|"));
        return new Report.Section(wording.text("audit.heading." + kind), "", columns, rows);
    }

    /// In how many plants each fact is missing, most first.
    public List<Report.Row> gaps(AuditSums sums) {
        return sums.gapsByAttribute().entrySet().stream()
                .sorted(Map.Entry.<String, Integer>comparingByValue()
                        .reversed()
                        .thenComparing(Map.Entry.comparingByKey()))
                .map(gap -> new Report.Row(Mark.SAME, List.of(heading(gap.getKey()), wording.count(gap.getValue()))))
                .toList();
    }

    /// The score, and how many remarks of each kind.
    public List<Report.Sum> sums(AuditSums sums) {
        List<Report.Sum> all = new ArrayList<>();
        all.add(new Report.Sum(
                wording.text("audit.score"), String.format(wording.language(), "%.1f", sums.score()), Mark.NEW));
        for (Kind kind : Kind.values()) {
            Mark mark = kind == Kind.IMPOSSIBLE ? Mark.REFUSED : kind == Kind.GAP ? Mark.SAME : Mark.DOUBTFUL;
            String label = wording.text("audit.kind." + kind.name().toLowerCase(Locale.ROOT));
            all.add(new Report.Sum(label, wording.count(sums.byKind().getOrDefault(kind, 0)), mark));
        }
        return all;
    }

    /// A remark in words, lengths in the shop's units.
    public String text(Remark remark) {
        boolean length =
                remark.attribute().startsWith("height") || remark.attribute().startsWith("spread");
        Problem problem = remark.problem();
        if (remark.kind() == Kind.CONFLICT && length) {
            Map<String, String> details = problem.details();
            problem = problem.with("read", length(details.getOrDefault("read", "")))
                    .with("other", length(details.getOrDefault("other", "")));
        }
        return wording.problem(problem);
    }

    private String length(String stored) {
        return LengthRange.read(stored).toOptional().map(wording::length).orElse(stored);
    }

    /// The facts that a plant lacks.
    public String missing(PlantAudit plant) {
        return plant.remarks().stream()
                .filter(remark -> remark.kind() == Kind.GAP)
                .map(remark -> heading(remark.attribute()))
                .collect(Collectors.joining(", "));
    }

    private static String heading(String attribute) {
        return attribute.replace('_', ' ');
    }

    /// The least known first.
    public static Comparator<PlantAudit> leastKnownFirst() {
        return Comparator.comparingInt(PlantAudit::score)
                .thenComparing(plant -> plant.name().sortKey());
    }
}
