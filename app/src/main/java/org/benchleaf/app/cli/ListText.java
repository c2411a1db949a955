package org.benchleaf.app.cli;

import java.io.PrintWriter;
import java.time.Month;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.benchleaf.app.service.ListReport;
import org.benchleaf.app.service.Spoken;
import org.benchleaf.catalog.lists.ListSite;
import org.benchleaf.content.Wording;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Season;

/// A plant list as text for a terminal.
final class ListText {
    private final Wording words;

    ListText(Wording words) {
        this.words = words;
    }

    /// @param checked whether it was checked, so that no remark means that nothing stands against it
    void write(ListReport report, boolean checked, PrintWriter out) {
        String site = site(report.list().site());
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

    /// Where and when it is planted, in a few words; empty when nothing is known.
    String site(ListSite site) {
        List<String> parts = new ArrayList<>();
        site.zone().map(Wish.HardyIn::new).map(words::wish).ifPresent(parts::add);
        site.light().map(words::term).ifPresent(parts::add);
        site.soil().map(Wish.LikesSoil::new).map(words::wish).ifPresent(parts::add);
        site.shipTo()
                .map(place -> words.text("list.ship-to", Map.of("place", place.toString())))
                .ifPresent(parts::add);
        site.by()
                .map(week -> words.text("list.by", Map.of("week", words.week(week))))
                .ifPresent(parts::add);
        return String.join("; ", parts);
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
        for (Month month : Month.values()) {
            Map<Season, List<String>> seen = new LinkedHashMap<>();
            for (ListReport.Seen one : report.months().getOrDefault(month, List.of())) {
                seen.computeIfAbsent(one.season(), fresh -> new ArrayList<>()).add(Integer.toString(one.line()));
            }
            String what = seen.entrySet().stream()
                    .sorted(Map.Entry.comparingByKey())
                    .map(entry -> words.term(entry.getKey()) + " "
                            + entry.getValue().stream().distinct().collect(Collectors.joining(", ")))
                    .collect(Collectors.joining("; "));
            out.println("  " + words.text("month." + month) + "  "
                    + (what.isEmpty() ? words.text("list.months.bare") : what));
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
        if (!report.bareMonths().isEmpty() && !report.lines().isEmpty()) {
            int bits = report.bareMonths().stream()
                    .mapToInt(month -> 1 << month.ordinal())
                    .sum();
            out.println("· " + words.text("list.bare", Map.of("months", new Spoken(words).months(new MonthSet(bits)))));
        }
    }
}
