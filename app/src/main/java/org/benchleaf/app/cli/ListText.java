package org.benchleaf.app.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.benchleaf.app.service.ListReport;
import org.benchleaf.app.service.ListWords;
import org.benchleaf.content.Wording;
import org.benchleaf.shared.measure.Money;

/// A plant list as text for a terminal.
final class ListText {
    private final Wording words;

    ListText(Wording words) {
        this.words = words;
    }

    /// @param checked whether it was checked, so that no remark means that nothing stands against it
    void write(ListReport report, boolean checked, PrintWriter out) {
        String site = new ListWords(words).site(report.list().site());
        out.println(report.list().name() + (site.isEmpty() ? "" : "  (" + site + ")"));
        for (ListReport.Line line : report.lines()) {
            out.println();
            write(line, out);
        }
        totals(report, out);
        months(report, out);
        if (checked) {
            remarks(report, out);
        }
    }

    private void write(ListReport.Line line, PrintWriter out) {
        String name = line.plant()
                .map(plant -> plant.name()
                        + plant.commonName(words.language())
                                .map(common -> ", " + common)
                                .orElse(""))
                .orElse(words.text("list.gone"));
        out.println(String.format("%2d. ", line.line().number())
                + words.count(line.line().quantity()) + " × " + name + "  ["
                + line.line().plant() + "]");
        List<String> parts = new ArrayList<>();
        if (line.item().isPresent()) {
            var item = line.item().get();
            parts.add(words.text(
                    line.missing() > 0 ? "list.line.short" : "list.line",
                    Map.of(
                            "size", words.size(item.size(), item.form()),
                            "free", words.count(line.free()),
                            "missing", words.count(line.missing()))));
            line.total()
                    .ifPresent(total -> parts.add(words.text(
                            "list.line.price",
                            Map.of(
                                    "price", words.money(item.price().orElse(total)),
                                    "total", words.money(total)))));
        } else {
            parts.add(words.text("list.line.none"));
        }
        if (!line.line().worked().isEmpty()) {
            parts.add(line.line().worked());
        }
        if (!line.line().note().isEmpty()) {
            parts.add(line.line().note());
        }
        out.println("    " + String.join("; ", parts));
    }

    private void totals(ListReport report, PrintWriter out) {
        out.println();
        int plants =
                report.lines().stream().mapToInt(line -> line.line().quantity()).sum();
        String sum = sum(report.totals());
        out.println(words.text(
                report.unpriced() > 0 ? "list.total.gaps" : "list.total",
                Map.of(
                        "plants", words.count(plants),
                        "total", sum,
                        "lines", words.count(report.unpriced()))));
        for (ListReport.TierTotal tier : report.tiers()) {
            out.println(words.text("list.total.tier", Map.of("tier", tier.tier().name(), "total", sum(tier.totals()))));
        }
    }

    private String sum(List<Money> amounts) {
        return amounts.isEmpty()
                ? words.money(Money.usDollars("0"))
                : amounts.stream().map(words::money).collect(Collectors.joining(" + "));
    }

    /// Each month with the lines that show something in it, and what.
    private void months(ListReport report, PrintWriter out) {
        out.println();
        out.println(words.text("list.months"));
        for (ListWords.InMonth month : new ListWords(words).months(report)) {
            out.println("  " + month.month() + "  "
                    + (month.seen().isEmpty() ? words.text("list.months.bare") : month.seen()));
        }
    }

    private void remarks(ListReport report, PrintWriter out) {
        out.println();
        if (report.remarks().isEmpty()) {
            out.println(words.text("list.sound"));
        }
        for (ListReport.Remark remark : report.remarks()) {
            out.println((remark.serious() ? "✗ " : "· ")
                    + words.text(
                            "list.remark",
                            Map.of(
                                    "line", Integer.toString(remark.line()),
                                    "kind", words.text("list.kind." + remark.kind()),
                                    "text", remark.text())));
        }
        new ListWords(words).bare(report).ifPresent(text -> out.println("· " + text));
    }
}
