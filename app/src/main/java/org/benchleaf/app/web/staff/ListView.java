package org.benchleaf.app.web.staff;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.service.ListReport;
import org.benchleaf.app.service.ListWords;
import org.benchleaf.catalog.model.ItemRecord;
import org.benchleaf.content.Wording;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.site.Exposure;
import org.benchleaf.shared.site.Moisture;

/// A plant list as its page shows it.
final class ListView {
    private final Benchleaf benchleaf;
    private final Wording wording;

    ListView(Benchleaf benchleaf) {
        this.benchleaf = benchleaf;
        this.wording = benchleaf.wording();
    }

    public record Choice(String value, String label) {}

    /// One line.
    ///
    /// @param had in which size and how many can be had
    /// @param price each and all; may be empty
    /// @param call where to ask what instead; empty when nothing is missing
    public record Row(
            int number,
            String name,
            String common,
            String path,
            int quantity,
            String had,
            String price,
            String note,
            String call) {}

    /// @param serious whether it stands against the list
    public record Remark(boolean serious, String about, String text) {}

    /// @param may whether the one who looks may change it
    Map<String, Object> model(ListReport report, ListForm form, boolean may) {
        ListWords words = new ListWords(wording);
        String name = PlantSearch.encoded(report.list().name());
        return Map.ofEntries(
                Map.entry("list", report.list().name()),
                Map.entry("version", report.list().version()),
                Map.entry("site", words.site(report.list().site())),
                Map.entry("rows", report.lines().stream().map(this::row).toList()),
                Map.entry("total", total(report)),
                Map.entry("remarks", remarks(report)),
                Map.entry("months", words.months(report)),
                Map.entry("bare", words.bare(report).orElse("")),
                Map.entry("form", form.all()),
                Map.entry("lights", choices(Arrays.asList(Exposure.values()))),
                Map.entry("soils", choices(Arrays.asList(Moisture.values()))),
                Map.entry("export", "/desk/lists/export?list=" + name),
                Map.entry("pack", "/desk/lists/pack?list=" + name),
                Map.entry("print", printPath(report)),
                Map.entry("may", may));
    }

    /// `not known` and the words of a vocabulary.
    List<Choice> choices(List<? extends Enum<?>> terms) {
        List<Choice> choices = new ArrayList<>(List.of(new Choice("", wording.text("desk.list.unknown"))));
        terms.forEach(term -> choices.add(new Choice(wording.term(term), wording.term(term))));
        return choices;
    }

    private Row row(ListReport.Line line) {
        var plant = line.plant();
        List<String> had = new ArrayList<>();
        if (line.item().isPresent()) {
            ItemRecord item = line.item().get();
            had.add(wording.text(
                    line.missing() > 0 ? "list.line.short" : "list.line",
                    Map.of(
                            "size", wording.size(item.size(), item.form()),
                            "free", wording.count(line.free()),
                            "missing", wording.count(line.missing()))));
        } else {
            had.add(wording.text("list.line.none"));
        }
        String note = java.util.stream.Stream.of(
                        line.line().worked(), line.line().note())
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining("; "));
        return new Row(
                line.line().number(),
                plant.map(one -> one.name().toString()).orElse(wording.text("list.gone")),
                plant.flatMap(one -> one.commonName(wording.language())).orElse(""),
                "/desk/plants/" + line.line().plant(),
                line.line().quantity(),
                String.join("; ", had),
                line.total()
                        .map(total -> wording.text(
                                "list.line.price",
                                Map.of(
                                        "price",
                                        wording.money(line.item()
                                                .flatMap(ItemRecord::price)
                                                .orElse(total)),
                                        "total",
                                        wording.money(total))))
                        .orElse(""),
                note,
                line.missing() == 0 ? "" : call(line));
    }

    private static String call(ListReport.Line line) {
        return "/desk/call?q=" + line.line().plant() + "&quantity=" + line.missing()
                + line.line()
                        .size()
                        .map(size -> "&size=" + PlantSearch.encoded(size.toString()))
                        .orElse("");
    }

    private String total(ListReport report) {
        int plants =
                report.lines().stream().mapToInt(line -> line.line().quantity()).sum();
        String sum = report.totals().stream().map(wording::money).collect(Collectors.joining(" + "));
        return wording.text(
                report.unpriced() > 0 ? "list.total.gaps" : "list.total",
                Map.of(
                        "plants", wording.count(plants),
                        "total", sum.isEmpty() ? wording.money(Money.usDollars("0")) : sum,
                        "lines", wording.count(report.unpriced())));
    }

    private List<Remark> remarks(ListReport report) {
        return report.remarks().stream()
                .map(remark -> new Remark(
                        remark.serious(),
                        wording.text(
                                "desk.list.about",
                                Map.of(
                                        "line", Integer.toString(remark.line()),
                                        "kind", wording.text("list.kind." + remark.kind()))),
                        remark.text()))
                .toList();
    }

    private static String printPath(ListReport report) {
        return "/desk/print?"
                + report.lines().stream()
                        .filter(line -> line.plant().isPresent())
                        .map(line -> "plant="
                                + PlantSearch.encoded(line.line().plant() + "|"
                                        + line.item()
                                                .map(item -> item.size().toString())
                                                .orElse("")))
                        .limit(PrintForm.MOST_LINES)
                        .collect(Collectors.joining("&"));
    }
}
