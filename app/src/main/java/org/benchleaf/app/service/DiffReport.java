package org.benchleaf.app.service;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.catalog.ImportDiff;
import org.benchleaf.catalog.ImportDiff.Difference;
import org.benchleaf.catalog.ImportDiff.Entry;
import org.benchleaf.catalog.intake.Finding;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.content.Wording;
import org.benchleaf.render.page.Report;
import org.benchleaf.render.page.Report.Mark;
import org.benchleaf.shared.measure.LengthRange;

/// A preview in words: the sums, then what is new, changed, doubtful and refused. The terminal and the page say the
/// same.
public final class DiffReport {
    private final Wording wording;

    public DiffReport(Wording wording) {
        this.wording = wording;
    }

    /// The page of a preview.
    ///
    /// @param most findings told
    public Report page(ImportPlan plan, ImportDiff diff, int most) {
        List<Report.Section> sections = new ArrayList<>();
        section(sections, "refused", findingRows(plan, Mark.REFUSED, most));
        section(sections, "doubtful", findingRows(plan, Mark.DOUBTFUL, most));
        List<Report.Row> changed = new ArrayList<>();
        List<Report.Row> added = new ArrayList<>();
        for (Entry entry : diff.entries()) {
            if (entry.isNew()) {
                added.add(new Report.Row(Mark.NEW, List.of(title(entry), details(entry))));
            } else {
                entry.differences()
                        .forEach(difference -> changed.add(new Report.Row(
                                Mark.CHANGED,
                                List.of(
                                        title(entry),
                                        field(difference),
                                        value(difference, difference.before()),
                                        value(difference, difference.after()),
                                        note(difference)))));
            }
        }
        section(sections, "changed", changed);
        section(sections, "new", added);
        return new Report(
                wording.text("preview.title", Map.of("file", plan.file())),
                wording.text(
                        "preview.note",
                        Map.of("revision", Long.toString(plan.base().number()))),
                sums(plan, diff),
                sections);
    }

    private void section(List<Report.Section> sections, String kind, List<Report.Row> rows) {
        if (rows.isEmpty()) {
            return;
        }
        List<String> columns = List.of(wording.text("preview.columns." + kind).split("\\|"));
        sections.add(new Report.Section(wording.text("preview.heading." + kind), "", columns, rows));
    }

    /// How many are new, changed, the same, doubtful and refused.
    public List<Report.Sum> sums(ImportPlan plan, ImportDiff diff) {
        List<Report.Sum> sums = new ArrayList<>();
        sum(sums, "new-plants", diff.newPlants(), Mark.NEW);
        sum(sums, "new-lots", diff.newLots(), Mark.NEW);
        sum(sums, "changed-plants", diff.changedPlants(), Mark.CHANGED);
        sum(sums, "changed-lots", diff.changedLots(), Mark.CHANGED);
        sum(sums, "same", (long) diff.samePlants() + diff.sameLots(), Mark.SAME);
        sums.add(new Report.Sum(
                wording.text("preview.sum.doubtful"), wording.count(count(plan, Mark.DOUBTFUL)), Mark.DOUBTFUL));
        sums.add(new Report.Sum(wording.text("preview.sum.refused"), wording.count(plan.rowsLeftOut()), Mark.REFUSED));
        return sums;
    }

    private void sum(List<Report.Sum> sums, String key, long count, Mark mark) {
        if (count > 0) {
            sums.add(new Report.Sum(
                    wording.text("preview.sum." + key, Map.of("count", wording.count(count))),
                    wording.count(count),
                    mark));
        }
    }

    private static long count(ImportPlan plan, Mark mark) {
        return plan.findings().stream().filter(finding -> mark(finding) == mark).count();
    }

    private static Mark mark(Finding finding) {
        return finding.outcome() == Finding.Outcome.ROW_LEFT_OUT ? Mark.REFUSED : Mark.DOUBTFUL;
    }

    private List<Report.Row> findingRows(ImportPlan plan, Mark mark, int most) {
        return plan.findings().stream()
                .filter(finding -> mark(finding) == mark)
                .limit(most)
                .map(finding -> new Report.Row(
                        mark,
                        List.of(
                                Long.toString(finding.place().row()),
                                finding.place().column().orElse(""),
                                wording.problem(finding.problem()),
                                outcome(finding))))
                .toList();
    }

    private String outcome(Finding finding) {
        return wording.text("load.outcome."
                + finding.outcome().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    /// `Acer rubrum`, or `lot T0012, Acer rubrum`.
    public String title(Entry entry) {
        return switch (entry.subject()) {
            case PLANT -> entry.title();
            case ITEM -> wording.text("preview.item", Map.of("size", entry.title(), "plant", entry.plant()));
            case LOT -> wording.text("preview.lot", Map.of("lot", entry.title(), "plant", entry.plant()));
        };
    }

    /// What a new lot is, in one line; empty for a plant.
    public String details(Entry entry) {
        return String.join(
                ", ",
                entry.differences().stream()
                        .map(difference -> field(difference) + " " + value(difference, difference.after()))
                        .toList());
    }

    public String field(Difference difference) {
        return difference.field().replace('_', ' ');
    }

    /// A value in the shop's units; a dash where there is none.
    public String value(Difference difference, Optional<String> text) {
        if (text.isEmpty()) {
            return "–";
        }
        boolean length =
                difference.field().startsWith("height") || difference.field().startsWith("spread");
        return length
                ? LengthRange.read(text.get()).toOptional().map(wording::length).orElse(text.get())
                : text.get();
    }

    /// Who states it, and when it is not the one shown.
    public String note(Difference difference) {
        return difference.shown()
                ? difference.source()
                : wording.text("preview.beside", Map.of("source", difference.source()));
    }
}
